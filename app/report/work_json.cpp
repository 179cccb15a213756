#include "app/report/work_json.hpp"

#include "app/report/rule_names.hpp"
#include "app/report/suggestion_json.hpp"

namespace app {
namespace {

Json numbersFromOne(const std::vector<std::size_t>& cuts)
{
    Json list = Json::array();
    for (const auto cut : cuts)
        list.push_back(cut + 1);
    return list;
}

} // namespace

Json piecesJson(std::span<const model::advice::Piece> pieces)
{
    Json list = Json::array();
    for (const auto& piece : pieces)
        list.push_back({{"limb", piece.limb},
                        {"at_m", number(piece.at_m)},
                        {"above_ground_m", number(piece.cut_m.z)},
                        {"diameter_m", number(piece.diameter_m)},
                        {"length_m", number(piece.length_m)},
                        {"mass_kg", number(piece.mass_kg)},
                        {"tool", jsonName(piece.tool)},
                        {"tool_source", toolSource(piece.tool)},
                        {"three_cuts", piece.threeCuts},
                        {"drop_radius_m", number(piece.dropRadius_m)}});
    return list;
}

Json dropZoneJson(std::span<const model::advice::InZone> inZone)
{
    Json list = Json::array();
    for (const auto& found : inZone)
        list.push_back({{"id", found.id},
                        {"kind", jsonName(found.kind)},
                        {"away_m", number(found.gap_m)},
                        {"drop_radius_m", number(found.radius_m)}});
    return list;
}

Json toJson(const model::advice::Debris& debris)
{
    return {
        {"mass_kg", number(debris.mass_kg)},
        {"brush_kg", number(debris.brush_kg)},
        {"brush_m3", number(debris.brush_m3)},
        {"brush_low_m3", number(debris.brushLow_m3)},
        {"brush_high_m3", number(debris.brushHigh_m3)},
        {"logs_kg", number(debris.logs_kg)},
        {"logs_m3", number(debris.logs_m3)},
        {"pieces", debris.pieces},
    };
}

Json toJson(const model::advice::SharedWork& shared)
{
    return {{"gardener", numbersFromOne(shared.gardener)},
            {"arborist", numbersFromOne(shared.arborist)},
            {"whole_tree", shared.wholeTree}};
}

} // namespace app
