#include "app/report/light_json.hpp"

#include "app/report/rule_names.hpp"
#include "app/report/suggestion_json.hpp"
#include "model/document/words.hpp"
#include "model/light/sample_day.hpp"

namespace app {
namespace {

using model::light::DayLight;
using model::light::LightClass;
using model::light::LightTaken;
using model::light::MonthLight;
using model::light::Suits;

Json toJson(const DayLight& light)
{
    return {{"sun_h", number(light.sun_h)}, {"dli_mol", number(light.dli_mol)}};
}

Json takenJson(const char* kind, const std::string& id, const LightTaken& taken)
{
    return {{kind, id}, {"removal", toJson(taken.removal)}, {"first_in", toJson(taken.firstIn)}};
}

const char* name(LightClass lightClass)
{
    switch (lightClass) {
    case LightClass::fullSun:
        return "full_sun";
    case LightClass::partSun:
        return "part_sun";
    case LightClass::partShade:
        return "part_shade";
    case LightClass::fullShade:
        break;
    }
    return "full_shade";
}

Json monthJson(const MonthLight& month, const model::Garden& garden)
{
    Json trees = Json::array();
    for (std::size_t i = 0; i < month.trees.size(); ++i) {
        const auto& tree = garden.trees.at(i);
        Json one = takenJson("tree", tree.id, month.trees[i]);
        Json limbs = Json::array();
        if (i < month.limbs.size())
            for (std::size_t limb = 0; limb < month.limbs[i].size(); ++limb)
                limbs.push_back(takenJson("limb", tree.limbs.at(limb).id, month.limbs[i][limb]));
        one["limbs"] = std::move(limbs);
        trees.push_back(std::move(one));
    }
    Json neighbours = Json::array();
    for (std::size_t i = 0; i < month.neighbours.size(); ++i)
        neighbours.push_back(
            takenJson("neighbour", garden.neighbours.at(i).id, month.neighbours[i]));
    return {{"open", toJson(month.open)},
            {"without_trees", toJson(month.withoutTrees)},
            {"standing", toJson(month.standing)},
            {"clear_sun_h", number(month.clearSun_h)},
            {"class", name(model::light::lightClass(month.clearSun_h))},
            {"trees", std::move(trees)},
            {"neighbours", std::move(neighbours)}};
}

Json cutJson(const model::CutLight& cut)
{
    return {{"tree", cut.tree},
            {"kind", std::string(model::word(cut.cut.kind))},
            {"limb", cut.cut.limb},
            {"at_m", number(cut.cut.at_m)},
            {"height_m", number(cut.cut.height_m)},
            {"share", number(cut.cut.share)},
            {"leaf_share", number(cut.leafShare)},
            {"gained", toJson(cut.gained)},
            {"gained_per_percent_of_leaf", toJson(cut.perPercent)}};
}

Json suitsJson(Suits suits)
{
    switch (suits) {
    case Suits::well:
        return "well";
    case Suits::barely:
        return "barely";
    case Suits::tooDark:
        return "too_dark";
    case Suits::notKnown:
        break;
    }
    return nullptr;
}

} // namespace

Json surfacesJson(const model::LightYear& year, const std::string& planting,
                  std::optional<std::chrono::month> month, const model::Garden& garden)
{
    Json list = Json::array();
    for (const auto& [light, cuts] : year.surfaces) {
        if (light.planting != planting)
            continue;
        Json months = Json::array();
        for (unsigned m = 1; m <= 12; ++m) {
            if (month && *month != std::chrono::month{m})
                continue;
            Json one = {{"month", m}};
            one.update(monthJson(light.months[m - 1], garden));
            months.push_back(std::move(one));
        }
        Json gains = Json::array();
        for (const auto& cut : cuts)
            gains.push_back(cutJson(cut));
        list.push_back({{"facing_deg", number(light.facing_deg)},
                        {"suits", suitsJson(light.suits)},
                        {"growing_season", monthJson(light.growingSeason, garden)},
                        {"months", std::move(months)},
                        {"cuts", std::move(gains)}});
    }
    return list;
}

Json sunshineJson(const model::light::Weather& weather)
{
    Json list = Json::array();
    for (const auto& share : weather.sunshineShare) {
        if (!share)
            return nullptr;
        list.push_back(number(*share));
    }
    return list;
}

Json growingMonthsJson(const model::Place& place)
{
    Json list = Json::array();
    for (unsigned m = 1; m <= 12; ++m)
        if (model::light::inGrowingSeason(std::chrono::month{m}, place))
            list.push_back(m);
    return list;
}

} // namespace app
