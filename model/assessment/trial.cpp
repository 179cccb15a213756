#include "model/assessment/trial.hpp"

#include "model/advice/prune.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace model {
namespace {

// A hand on a drawing is no finer than this; a saw beside a collar wider than it is thick.
constexpr double kNear_m = 0.25;

double reach_m(double diameter_m)
{
    return std::max(kNear_m, 1.5 * diameter_m);
}

} // namespace

Trial tryCuts(const Garden& garden, const Tables& tables, const Question& question,
              const std::string& tree, const std::vector<Cut>& cuts)
{
    const auto found = std::ranges::find(garden.trees, tree, &Tree::id);
    if (found == garden.trees.end())
        throw std::domain_error("tryCuts: the garden has no tree '" + tree + "'");
    const auto& drawn = *found;
    const auto* species = findSpecies(tables, drawn.species);
    if (!species)
        throw std::domain_error("tryCuts: no species '" + drawn.species + "' in the tables");
    const auto foliations = light::foliations(garden, tables);
    const auto& foliation = foliations[static_cast<std::size_t>(found - garden.trees.begin())];
    const advice::Surroundings around{tables, foliations};
    Trial trial;
    trial.judged = advice::judge(garden, drawn, foliation, *species, question.date, cuts,
                                 {.spare_m = 0.0, .goals = {}, .around = &around});
    const auto made = advice::madeInTurn(drawn, cuts);
    trial.standing = advice::afterCuts(drawn, made);
    const auto conditions = conditionsOn(question.date, drawn, *species, garden.place,
                                         question.gust_m_s.value_or(garden.designGust_m_s));
    const auto loadOf = [&](const Tree& standing) {
        return load::treeLoad(standing, foliation, *species, garden.place, garden.exposure,
                              conditions);
    };
    trial.load = loadOf(drawn);
    trial.loadAfter = loadOf(trial.standing);
    Garden after = garden;
    after.trees[static_cast<std::size_t>(found - garden.trees.begin())] = trial.standing;
    trial.sun = light::plantingSun(garden, foliations, tables, question.date);
    trial.sunAfter = light::plantingSun(after, foliations, tables, question.date);
    return trial;
}

Cut cutAt(const Tree& tree, std::size_t limb, double at_m)
{
    const auto& sawn = tree.limbs[limb];
    const double length = length_m(sawn);
    const double place_m = std::clamp(at_m, 0.0, length);
    const double near_m = reach_m(axisPoint(sawn, place_m).diameter_m);
    if (sawn.parent && place_m <= near_m)
        return {CutKind::removal, sawn.id, 0.0, {}, {}, {}};
    Cut cut{CutKind::reduction, sawn.id, std::min(place_m, 0.99 * length), {}, {}, {}};
    double nearest_m = near_m;
    for (const auto& side : tree.limbs)
        if (side.parent == sawn.id && std::abs(side.attachedAt_m - place_m) <= nearest_m &&
            side.attachedAt_m > 0.0 && side.attachedAt_m < length) {
            nearest_m = std::abs(side.attachedAt_m - place_m);
            cut.at_m = side.attachedAt_m;
        }
    return cut;
}

} // namespace model
