#include "tests/bench/plausible_garden.hpp"

#include "model/advice/broken_rules.hpp"
#include "model/advice/prune.hpp"
#include "model/advice/single_cuts.hpp"
#include "model/advice/suggestion.hpp"
#include "model/sketch/first_tree.hpp"
#include "model/sketch/pipe_model.hpp"
#include "tests/model/species/table_files.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <set>

namespace model::advice {
namespace {

double pick(std::mt19937& random, double low, double high)
{
    return std::uniform_real_distribution<double>(low, high)(random);
}

sketch::FirstMeasures measures(std::mt19937& random)
{
    constexpr std::array kHabits{sketch::Habit::spreading, sketch::Habit::vase,
                                 sketch::Habit::conical};
    for (;;) {
        sketch::FirstMeasures drawn;
        drawn.stemDiameter_m = pick(random, 0.2, 0.6);
        drawn.height_m = drawn.stemDiameter_m * pick(random, 22.0, 32.0);
        drawn.spread_m = drawn.height_m * pick(random, 0.5, 0.9);
        drawn.lowestLimb_m = pick(random, 1.6, 3.0);
        drawn.habit = kHabits[random() % kHabits.size()];
        if (!sketch::measureFault(drawn))
            return drawn;
    }
}

/// A lateral somewhere on the outer part of some limb.
void addLateral(std::mt19937& random, Tree& tree)
{
    const std::size_t on = 1 + random() % (tree.limbs.size() - 1);
    const Limb parent = tree.limbs[on];
    const double length = length_m(parent);
    const double at = length * pick(random, 0.3, 0.85);
    const auto from = axisPoint(parent, at);
    const double bearing = std::atan2(from.direction.y, from.direction.x) + pick(random, -1.3, 1.3);
    const double run = std::max(0.4, length * pick(random, 0.2, 0.45));
    const Vec3 out{run * std::cos(bearing), run * std::sin(bearing), run * pick(random, 0.0, 0.6)};
    Limb lateral;
    lateral.id = "more-" + std::to_string(tree.limbs.size());
    lateral.parent = parent.id;
    lateral.attachedAt_m = at;
    lateral.stations = {{from.position_m, 1.0}, {from.position_m + out, 1.0}};
    lateral.foliage.emplace();
    lateral.foliage->from_m = 0.25 * length_m(lateral);
    lateral.foliage->radius_m =
        parent.foliage ? 0.8 * parent.foliage->radius_m : 0.4 * length_m(lateral);
    tree.limbs.push_back(std::move(lateral));
}

/// Leaves out some limb that carries no other.
void dropLateral(std::mt19937& random, Tree& tree)
{
    const auto order = limbOrder(tree);
    for (;;) {
        const std::size_t limb = 1 + random() % (tree.limbs.size() - 1);
        if (!order.children[limb].empty())
            continue;
        tree.limbs.erase(tree.limbs.begin() + static_cast<std::ptrdiff_t>(limb));
        return;
    }
}

Tree drawnTree(std::mt19937& random, std::size_t pieces)
{
    constexpr std::array kSpecies{"Acer saccharinum", "Acer rubrum", "Quercus robur",
                                  "Tilia cordata"};
    const auto asked = measures(random);
    Tree tree = sketch::firstTree(asked);
    while (pieceCount(tree) < pieces)
        addLateral(random, tree);
    while (pieceCount(tree) > pieces)
        dropLateral(random, tree);
    sketch::thickenByLeaf(tree, asked.stemDiameter_m);
    tree.id = "tree";
    tree.species = kSpecies[random() % kSpecies.size()];
    return tree;
}

/// Asks for as much as can be asked, so that what is there can be read from the results.
Suggestion measured(const Garden& garden, const Foliation& foliation, const Species& species,
                    const Surroundings& around, std::chrono::year_month_day date,
                    const std::vector<Cut>& cuts)
{
    return judge(garden, garden.trees[0], foliation, species, date, cuts,
                 {.spare_m = 0.0,
                  .goals = {{GoalKind::relief, Want::must, "", 1e-3, {}, {}},
                            {GoalKind::light, Want::must, "bed", 24.0, {}, {}}},
                  .around = &around});
}

std::vector<Cut> someCuts(std::mt19937& random, const Tree& tree)
{
    auto all = singleCuts(tree);
    std::ranges::shuffle(all, random);
    all.resize(std::min<std::size_t>(all.size(), 3 + random() % 6));
    return madeInTurn(tree, all);
}

} // namespace

std::size_t pieceCount(const Tree& tree)
{
    std::size_t count = tree.limbs.size();
    std::set<std::pair<std::string, double>> unions;
    for (const auto& limb : tree.limbs)
        if (limb.parent)
            unions.emplace(*limb.parent, limb.attachedAt_m);
    return count + unions.size();
}

Garden plausibleGarden(std::mt19937& random, std::size_t pieces)
{
    Garden garden;
    garden.place = {51.5, 0.0, 50.0, "Europe/London", {}};
    garden.designGust_m_s = 30.0;
    garden.trees = {drawnTree(random, pieces)};
    garden.strips.resize(2);
    garden.strips[0].id = "path";
    garden.strips[0].outline_m = {{-9, 1.5}, {9, 1.5}, {9, 2.7}, {-9, 2.7}};
    garden.strips[1].id = "drive";
    garden.strips[1].use = StripUse::drive;
    garden.strips[1].outline_m = {{2, -9}, {4.5, -9}, {4.5, 9}, {2, 9}};
    garden.plantings.resize(1);
    garden.plantings[0].id = "bed";
    garden.plantings[0].plant = "Solanum lycopersicum";
    garden.plantings[0].outline_m = {{-2, 3}, {2, 3}, {2, 6}, {-2, 6}};
    return garden;
}

std::vector<Goal> reachableGoals(std::mt19937& random, Garden& garden, const Foliation& foliation,
                                 const Species& species, const Surroundings& around,
                                 std::chrono::year_month_day date)
{
    constexpr double kAsked = 0.8; // of what the drawn cuts bring
    constexpr double kOver_m = 50.0;
    const Tree& tree = garden.trees[0];
    for (auto& strip : garden.strips)
        strip.headroom_m = kOver_m;
    const auto now = measured(garden, foliation, species, around, date, {});
    std::optional<Suggestion> best;
    double bestWorth = 0.0;
    for (int tries = 0; tries < 60; ++tries) {
        const auto cuts = someCuts(random, tree);
        if (!brokenRules(tree, foliation, species, 0.16, cuts).empty())
            continue;
        auto then = measured(garden, foliation, species, around, date, cuts);
        const double relief = *now.goals[0].before - *then.goals[0].after;
        const double light = *then.goals[1].after - *now.goals[1].before;
        double room = 0.0;
        for (std::size_t i = 0; i < garden.strips.size(); ++i)
            if (now.before[i].worstHeight_m())
                room +=
                    then.after[i].worstHeight_m().value_or(8.0) - *now.before[i].worstHeight_m();
        const double worth =
            std::min({relief / *now.goals[0].before / 0.1, light / 0.3, room / 0.5});
        if (then.leafShare < 0.06 || (best && worth <= bestWorth))
            continue;
        bestWorth = worth;
        best = std::move(then);
    }
    for (std::size_t i = 0; i < garden.strips.size(); ++i) {
        const auto before = now.before[i].worstHeight_m();
        const auto after = best ? best->after[i].worstHeight_m().value_or(8.0) : 0.0;
        garden.strips[i].headroom_m = before && best ? std::lerp(*before, after, kAsked) : 0.1;
    }
    if (!best)
        return {};
    return {{GoalKind::relief,
             Want::must,
             "",
             std::lerp(*now.goals[0].before, *best->goals[0].after, kAsked),
             {},
             {}},
            {GoalKind::light,
             Want::must,
             "bed",
             std::lerp(*now.goals[1].before, *best->goals[1].after, kAsked),
             {},
             {}}};
}

} // namespace model::advice
