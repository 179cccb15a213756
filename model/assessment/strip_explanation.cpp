#include "model/assessment/strip_explanation.hpp"

#include "model/assessment/find_tree.hpp"
#include "model/load/limb_load.hpp"
#include "model/load/sag.hpp"

#include <algorithm>
#include <stdexcept>

namespace model {

double StripExplanation::shortfall_m() const
{
    double lowest_m = needed_m;
    for (const auto& place : {drawn, heaviest})
        if (place)
            lowest_m = std::min(lowest_m, place->height_m);
    return needed_m - lowest_m;
}

StripExplanation explainStrip(const Garden& garden, const Tables& tables, const std::string& tree,
                              const std::string& strip)
{
    const auto& [found, species] = findTree(garden, tables, tree);
    const auto ground = std::ranges::find(garden.strips, strip, &Strip::id);
    if (ground == garden.strips.end())
        throw std::out_of_range("explainStrip: no strip '" + strip + "'");
    const auto foliation = foliate(found, species);
    const auto sag = load::sagUnder(found, foliation, species, load::kHeaviest);
    const auto load =
        load::treeLoad(found, foliation, species, garden.place, garden.exposure, load::kHeaviest);
    StripExplanation result;
    result.tree = tree;
    result.strip = strip;
    result.needed_m = headroom::neededHeadroom_m(*ground);
    if (!ground->headroom_m)
        result.neededSource = headroom::usualHeadroom(ground->use).source;
    result.drawn = headroom::lowestPlace(found, ground->outline_m);
    result.heaviest = headroom::lowestPlace(sag.tree, ground->outline_m);
    result.rain_kg = load.rain_kg;
    result.fruit_kg = load.fruit_kg;
    if (result.heaviest)
        result.sinks_m = sag.limbs.at(result.heaviest->limb).most_m;
    return result;
}

} // namespace model
