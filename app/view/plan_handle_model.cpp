#include "app/view/plan_handle_model.hpp"

namespace app {

QVariant PlanHandleModel::data(const QModelIndex& index, int role) const
{
    const auto* handle = rowAt(index);
    if (!handle)
        return {};
    switch (role) {
    case X:
        return handle->at.x();
    case Y:
        return handle->at.y();
    case ThingId:
        return handle->thing;
    case Corner:
        return handle->corner;
    case IsWhole:
        return handle->corner < 0;
    case Label:
    case Qt::DisplayRole:
        return handle->label;
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
