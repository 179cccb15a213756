#include "app/view/plan_handle_model.hpp"

#include <algorithm>

namespace app {

void PlanHandleModel::show(std::vector<Handle> next)
{
    const bool sameRows = std::ranges::equal(next, handles_, [](const auto& a, const auto& b) {
        return a.thing == b.thing && a.corner == b.corner;
    });
    if (!sameRows) {
        beginResetModel();
        handles_ = std::move(next);
        endResetModel();
        return;
    }
    handles_.swap(next);
    for (std::size_t row = 0; row < handles_.size(); ++row)
        if (handles_[row] != next[row])
            emit dataChanged(index(static_cast<int>(row)), index(static_cast<int>(row)));
}

int PlanHandleModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(handles_.size());
}

QVariant PlanHandleModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& handle = handles_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case X:
        return handle.at.x();
    case Y:
        return handle.at.y();
    case ThingId:
        return handle.thing;
    case Corner:
        return handle.corner;
    case IsWhole:
        return handle.corner < 0;
    case Label:
    case Qt::DisplayRole:
        return handle.label;
    default:
        return {};
    }
}

QHash<int, QByteArray> PlanHandleModel::roleNames() const
{
    return {{X, "handleX"},     {Y, "handleY"},       {ThingId, "thingId"},
            {Corner, "corner"}, {IsWhole, "isWhole"}, {Label, "label"}};
}

} // namespace app
