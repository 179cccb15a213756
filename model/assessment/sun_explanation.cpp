#include "model/assessment/sun_explanation.hpp"

#include "model/light/sun_path.hpp"

#include <algorithm>
#include <stdexcept>

namespace model {
namespace {

constexpr std::chrono::seconds kStep{std::chrono::minutes{10}};

std::vector<ShadeExplanation> shades(const Garden& garden, const Tables& tables,
                                     const std::vector<Foliation>& foliations,
                                     const light::PlantingSun& sun,
                                     std::chrono::year_month_day date)
{
    std::vector<ShadeExplanation> all;
    for (std::size_t i = 0; i < sun.trees.size(); ++i) {
        const auto& shade = sun.trees[i];
        if (shade.lost_h <= 0.0)
            continue;
        ShadeExplanation explained{shade.tree, shade.lost_h, std::nullopt, {}};
        if (i < garden.trees.size()) {
            const auto& tree = garden.trees[i];
            const auto* species = findSpecies(tables, tree.species);
            explained.leafShare = light::leafShare(*species, garden.place, date, tree.leafDates);
            explained.foliation = foliations[i];
        }
        all.push_back(explained);
    }
    std::ranges::stable_sort(all, std::ranges::greater{}, &ShadeExplanation::lost_h);
    return all;
}

} // namespace

SunExplanation explainSun(const Garden& garden, const Tables& tables, const std::string& planting,
                          std::chrono::year_month_day date)
{
    const auto found = std::ranges::find(garden.plantings, planting, &Planting::id);
    if (found == garden.plantings.end())
        throw std::out_of_range("no planting '" + planting + "' in the garden");
    const auto foliations = light::foliations(garden, tables);
    // All plantings, for a tall one stands in the light of the others.
    auto all = light::plantingSun(garden, foliations, tables, date);
    SunExplanation result;
    result.planting = planting;
    result.date = date;
    for (const auto& step : light::sunPath(garden.place, date, kStep)) {
        result.dayLength_h += step.hours;
        result.noon_deg = std::max(result.noon_deg, step.position.elevation_deg);
    }
    result.sun = std::move(all.at(static_cast<std::size_t>(found - garden.plantings.begin())));
    result.trees = shades(garden, tables, foliations, result.sun, date);
    return result;
}

} // namespace model
