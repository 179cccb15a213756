#include "app/view/stage_model.hpp"

namespace app {

void StageModel::show(std::vector<StageRow> rows)
{
    if (rows == rows_)
        return;
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

int StageModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant StageModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case When:
    case Qt::DisplayRole:
        return row.when;
    case Leaf:
        return row.leaf;
    case Cuts:
        return row.cuts;
    case Taken:
        return row.taken;
    case Allowed:
        return row.allowed;
    default:
        return {};
    }
}

QHash<int, QByteArray> StageModel::roleNames() const
{
    return {{When, "when"}, {Leaf, "leaf"}, {Cuts, "cuts"}, {Taken, "taken"}, {Allowed, "allowed"}};
}

} // namespace app
