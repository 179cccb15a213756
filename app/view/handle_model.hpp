#pragma once

#include "app/drawing/side_frame.hpp"
#include "app/format/units.hpp"
#include "model/garden/tree.hpp"

#include <QAbstractListModel>
#include <QPointF>
#include <QtQml/qqmlregistration.h>

namespace app {

/// The handles on the side view: one for each station of each limb. Only limb ends and the
/// stations of the chosen limb are shown. Rows change only when limbs come or go, so that a handle
/// keeps the keyboard's focus while its limb is moved.
class HandleModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role {
        X = Qt::UserRole + 1,
        Y,
        LimbId,
        Station,
        IsEnd,
        IsUnion,
        IsChosen,
        IsShown,
        Label
    };

    using QAbstractListModel::QAbstractListModel;

    /// \param tree  null: no handles
    void show(const model::Tree* tree, const SideFrame& frame, const std::string& chosenLimb,
              const Units& units);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    struct Handle {
        QString limb;
        int station{};
        QPointF at;
        bool isEnd{};
        bool isChosen{};
        QString label;
        friend bool operator==(const Handle&, const Handle&) = default;
    };
    [[nodiscard]] static QString label(const model::Limb& limb, std::size_t station,
                                       const Units& units);

    std::vector<Handle> handles_;
};

} // namespace app
