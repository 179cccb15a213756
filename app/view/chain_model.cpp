#include "app/view/chain_model.hpp"

namespace app {

void ChainModel::show(const std::vector<ChainPart>& parts)
{
    std::vector<Row> rows;
    for (const auto& part : parts) {
        rows.push_back({part.heading, {}, {}});
        for (const auto& step : part.steps)
            rows.push_back({{}, {}, step});
        for (const auto& remark : part.remarks)
            rows.push_back({{}, remark, {}});
    }
    // The same steps with other figures keep their place, so that a list that is read doesn't jump.
    if (rows.size() == rows_.size()) {
        rows_ = std::move(rows);
        if (!rows_.empty())
            emit dataChanged(index(0), index(static_cast<int>(rows_.size()) - 1));
        return;
    }
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

int ChainModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant ChainModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Heading:
        return row.heading;
    case Remark:
        return row.remark;
    case Name:
    case Qt::DisplayRole:
        return row.step.name;
    case Value:
        return row.step.value;
    case Origin:
        return row.step.origin;
    default:
        return {};
    }
}

QHash<int, QByteArray> ChainModel::roleNames() const
{
    return {{Heading, "heading"},
            {Remark, "remark"},
            {Name, "stepName"},
            {Value, "stepValue"},
            {Origin, "origin"}};
}

} // namespace app
