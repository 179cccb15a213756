#include "app/view/handle_model.hpp"

#include "app/view/limb_title.hpp"

namespace app {

QString HandleModel::label(const model::Limb& limb, std::size_t station, const Units& units)
{
    const auto& at = limb.stations[station];
    const QString name = limbTitle(limb);
    const QString place = station == 0                          ? tr("Union of %1").arg(name)
                          : station + 1 == limb.stations.size() ? tr("End of %1").arg(name)
                                                                : tr("Bend in %1").arg(name);
    return tr("%1: %2 above the ground, %3 thick")
        .arg(place, units.length(at.position_m.z), units.diameter(at.diameter_m));
}

void HandleModel::show(const model::Tree* tree, const SideFrame& frame,
                       const std::string& chosenLimb, const Units& units)
{
    std::vector<SideHandle> next;
    if (tree)
        for (const auto& limb : tree->limbs)
            for (std::size_t s = limb.parent ? 0 : 1; s < limb.stations.size(); ++s)
                next.push_back({QString::fromStdString(limb.id), static_cast<int>(s),
                                frame.toCanvas(limb.stations[s].position_m),
                                s + 1 == limb.stations.size(), limb.id == chosenLimb,
                                label(limb, s, units)});
    showRows(std::move(next));
}

QVariant HandleModel::data(const QModelIndex& index, int role) const
{
    const auto* handle = rowAt(index);
    if (!handle)
        return {};
    switch (role) {
    case X:
        return handle->at.x();
    case Y:
        return handle->at.y();
    case LimbId:
        return handle->limb;
    case Station:
        return handle->station;
    case IsEnd:
        return handle->isEnd;
    case IsUnion:
        return handle->station == 0;
    case IsChosen:
        return handle->isChosen;
    case IsShown:
        return handle->isEnd || handle->isChosen;
    case Label:
    case Qt::DisplayRole:
        return handle->label;
    default:
        return {};
    }
}

QHash<int, QByteArray> HandleModel::roleNames() const
{
    return {{X, "handleX"},         {Y, "handleY"},       {LimbId, "limbId"},
            {Station, "station"},   {IsEnd, "isEnd"},     {IsUnion, "isUnion"},
            {IsChosen, "isChosen"}, {IsShown, "isShown"}, {Label, "label"}};
}

} // namespace app
