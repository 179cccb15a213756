#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/tree.hpp"

#include <numeric>

namespace model::advice {

/// Leaf of a limb and of all that grows from it, m2.
inline double leafFromHere_m2(const Tree& tree, const Foliation& foliation, std::size_t limb)
{
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    const auto all = limbAndBeyond(limbOrder(tree), limb);
    return std::accumulate(all.begin(), all.end(), 0.0,
                           [&](double sum, std::size_t i) { return sum + areas[i]; });
}

/// Share of that leaf on the inner two thirds of the limb as long as it was, its own leaf laid out
/// in short steps and hanging shoots left out.
inline double innerShareByHand(Tree tree, const Foliation& foliation, std::size_t limb,
                               double was_m)
{
    for (auto& each : tree.limbs)
        if (each.foliage)
            each.foliage->hanging_m = 0.0;
    constexpr int kSteps = 20000;
    const auto& drawn = tree.limbs[limb];
    const double length = length_m(drawn);
    const double all = leafFromHere_m2(tree, foliation, limb);
    double inner = 0.0;
    if (drawn.foliage) {
        int steps = 0;
        int inside = 0;
        for (int i = 0; i < kSteps; ++i) {
            const double along = (i + 0.5) / kSteps * length;
            steps += along > drawn.foliage->from_m;
            inside += along > drawn.foliage->from_m && along <= was_m * 2.0 / 3.0;
        }
        inner = steps > 0 ? leafAreaByLimb_m2(tree, foliation)[limb] * inside / steps : 0.0;
    }
    for (std::size_t i = 0; i < tree.limbs.size(); ++i)
        if (tree.limbs[i].parent == drawn.id && tree.limbs[i].attachedAt_m <= was_m * 2.0 / 3.0)
            inner += leafFromHere_m2(tree, foliation, i);
    return all > 0.0 ? inner / all : 1.0;
}

/// A limb keeps less than half of its leaf on its inner two thirds, and less than before.
/// Straight limbs only.
inline bool leavesALionTail(const Tree& before, const Tree& after, const Foliation& foliation)
{
    constexpr double kLaidOut = 1e-4;
    for (std::size_t i = 0; i < after.limbs.size(); ++i) {
        const auto was = limbIndex(before, after.limbs[i].id);
        if (!after.limbs[i].parent)
            continue;
        const double was_m = length_m(before.limbs[was]);
        const double share = innerShareByHand(after, foliation, i, was_m);
        if (share < 0.5 - kLaidOut &&
            share < innerShareByHand(before, foliation, was, was_m) - 2.0 * kLaidOut)
            return true;
    }
    return false;
}

} // namespace model::advice
