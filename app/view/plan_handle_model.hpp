#pragma once

#include <QAbstractListModel>
#include <QPointF>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace app {

/// The handles on the plan: one for each corner of the chosen thing and one that moves it whole, or
/// one for each tree. Rows change only when handles come or go, so that a handle keeps the
/// keyboard's focus while it is moved.
class PlanHandleModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role { X = Qt::UserRole + 1, Y, ThingId, Corner, IsWhole, Label };

    struct Handle {
        QString thing; ///< id
        int corner{};  ///< -1: the whole thing
        QPointF at;
        QString label;
        friend bool operator==(const Handle&, const Handle&) = default;
    };

    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<Handle> handles);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<Handle> handles_;
};

} // namespace app
