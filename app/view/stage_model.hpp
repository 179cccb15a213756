#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace app {

/// One visit of a job that takes several.
struct StageRow {
    QString when;
    QString leaf; ///< "18 % of the leaf, of 25 % that may go then"
    QString cuts; ///< in working order
    double taken{};
    double allowed{};
    friend bool operator==(const StageRow&, const StageRow&) = default;
};

/// The visits, the first first.
class StageModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role { When = Qt::UserRole + 1, Leaf, Cuts, Taken, Allowed };

    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<StageRow> rows);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<StageRow> rows_;
};

} // namespace app
