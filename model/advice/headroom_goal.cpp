#include "model/advice/headroom_goal.hpp"

#include "model/advice/limb_part.hpp"
#include "model/headroom/headroom.hpp"
#include "model/load/sag.hpp"

#include <algorithm>
#include <cmath>

namespace model::advice {
namespace {

// A tenth of a millimetre: far below what a tape shows, far above what rounding makes.
constexpr double kTouch_m = 1e-4;

bool below(const Curtain& solid, const HeadroomGoal& goal)
{
    if (lowestPoint(solid).z >= goal.height_m - kTouch_m)
        return false; // spares the plan geometry for all that hangs high
    const auto low = headroom::lowestOver(solid, goal.outline_m);
    return low && low->height_m < goal.height_m - kTouch_m;
}

bool blocks(const Limb& limb, const HeadroomGoal& goal)
{
    Tree alone;
    alone.limbs = {limb};
    const bool walkedRound = !limb.parent && goal.stemStandsIn;
    return (!walkedRound &&
            std::ranges::any_of(woodSolids(limb), [&](const auto& s) { return below(s, goal); })) ||
           std::ranges::any_of(leafyBodies(alone),
                               [&](const auto& b) { return below(b.solid, goal); });
}

bool blocks(const Hanging& limb, const HeadroomGoal& goal)
{
    return blocks(limb.drawn, goal) || (limb.heavy && blocks(*limb.heavy, goal));
}

/// Shoots to be cut so high that they end at `lift_m` when the limb hangs at its heaviest, to the
/// next full centimetre.
double cutHeight_m(const Hanging& limb, double lift_m)
{
    constexpr double kPerMetre = 100.0;
    constexpr double kRounding = 1e-6;
    const double drop = limb.heavy ? load::largestDrop_m(limb.drawn, *limb.heavy) : 0.0;
    return drop > kTouch_m ? std::ceil((lift_m + drop) * kPerMetre - kRounding) / kPerMetre
                           : lift_m;
}

} // namespace

std::vector<HeadroomGoal> headroomGoals(const Garden& garden, const Tree& tree)
{
    std::vector<HeadroomGoal> goals;
    for (const auto& strip : garden.strips) {
        HeadroomGoal goal{strip.outline_m, headroom::neededHeadroom_m(strip), false};
        for (auto& corner : goal.outline_m)
            corner = corner - tree.position_m;
        goal.stemStandsIn = headroom::stemStandsIn(tree, goal.outline_m);
        goals.push_back(std::move(goal));
    }
    return goals;
}

Hanging hangingPart(const Hanging& limb, double from_m, double to_m)
{
    Hanging piece{limbPart(limb.drawn, from_m, to_m), {}};
    if (limb.heavy) {
        // Bending makes the chain of its stations a little shorter.
        const double shrink = length_m(*limb.heavy) / length_m(limb.drawn);
        piece.heavy = limbPart(*limb.heavy, shrink * from_m, shrink * to_m);
    }
    return piece;
}

bool blocksAny(const Hanging& limb, const std::vector<HeadroomGoal>& goals)
{
    return std::ranges::any_of(goals, [&](const auto& goal) { return blocks(limb, goal); });
}

std::optional<Stay> howToStay(const Hanging& limb, const Foliation& foliation,
                              const std::vector<HeadroomGoal>& goals)
{
    double lift_m = 0.0;
    for (const auto& goal : goals)
        if (blocks(limb, goal))
            lift_m = std::max(lift_m, goal.height_m);
    if (lift_m == 0.0)
        return Stay{std::nullopt, ownLeaf_m2(limb.drawn, foliation)};
    if (!limb.drawn.foliage || limb.drawn.foliage->hanging_m <= 0.0)
        return std::nullopt;
    const double cut_m = cutHeight_m(limb, lift_m);
    Hanging lifted = limb;
    lifted.drawn.foliage->hem_m = std::max(cut_m, limb.drawn.foliage->hem_m.value_or(0.0));
    if (lifted.heavy && lifted.heavy->foliage)
        lifted.heavy->foliage->hem_m = std::max(lift_m, limb.heavy->foliage->hem_m.value_or(0.0));
    if (blocksAny(lifted, goals))
        return std::nullopt;
    return Stay{cut_m, ownLeaf_m2(lifted.drawn, foliation)};
}

Garden withSpare(const Garden& garden, double spare_m)
{
    Garden raised = garden;
    for (auto& strip : raised.strips)
        strip.headroom_m = headroom::neededHeadroom_m(strip) + spare_m;
    return raised;
}

} // namespace model::advice
