#include "app/view/handle_model.hpp"

#include "app/view/limb_title.hpp"

namespace app {

QString HandleModel::label(const SideHandle& handle) const
{
    const Units units(locale_, handle.measures);
    const QString place = handle.station == 0 ? tr("Union of %1").arg(handle.limbName)
                          : handle.isEnd      ? tr("End of %1").arg(handle.limbName)
                                              : tr("Bend in %1").arg(handle.limbName);
    return tr("%1: %2 above the ground, %3 thick")
        .arg(place, units.length(handle.height_m), units.diameter(handle.diameter_m));
}

void HandleModel::show(const model::Tree* tree, const SideFrame& frame,
                       const std::string& chosenLimb, const Units& units)
{
    locale_ = units.locale();
    std::vector<SideHandle> next;
    if (tree)
        for (const auto& limb : tree->limbs) {
            const auto id = QString::fromStdString(limb.id);
            const auto name = limbTitle(limb);
            for (std::size_t s = limb.parent ? 0 : 1; s < limb.stations.size(); ++s) {
                const auto& station = limb.stations[s];
                next.push_back({id, static_cast<int>(s), frame.toCanvas(station.position_m),
                                s + 1 == limb.stations.size(), limb.id == chosenLimb, name,
                                station.position_m.z, station.diameter_m, units.measures()});
            }
        }
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
        return label(*handle);
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
