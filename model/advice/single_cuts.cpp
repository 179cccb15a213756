#include "model/advice/single_cuts.hpp"

#include "model/advice/fruit_wood.hpp"
#include "model/advice/limits.hpp"
#include "model/crown/leafy_bodies.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace model::advice {
namespace {

/// Leaf on a limb or on anything that grows from it: a bare lateral can't take over.
std::vector<char> leafyLimbs(const Tree& tree, const LimbOrder& order)
{
    std::vector<char> leafy(tree.limbs.size());
    for (auto limb = order.rootFirst.rbegin(); limb != order.rootFirst.rend(); ++limb)
        leafy[*limb] = tree.limbs[*limb].foliage ||
                       std::ranges::any_of(order.children[*limb],
                                           [&](std::size_t child) { return leafy[child] != 0; });
    return leafy;
}

/// Where a limb may be shortened, one cut for each place.
std::vector<double> reductions_m(const Tree& tree, const LimbOrder& order,
                                 const std::vector<char>& leafy, std::size_t limb)
{
    const double length = length_m(tree.limbs[limb]);
    std::vector<double> places;
    for (const auto lateral : order.children[limb]) {
        const double at_m = tree.limbs[lateral].attachedAt_m;
        const double wound_m = axisPoint(tree.limbs[limb], at_m).diameter_m;
        const double lateral_m = tree.limbs[lateral].stations.front().diameter_m;
        if (leafy[lateral] != 0 && at_m > 0.0 && at_m < length &&
            lateral_m >= kLateralLeast * wound_m)
            places.push_back(at_m);
    }
    const auto rest = std::ranges::unique(places); // children come in order of where they join
    places.erase(rest.begin(), rest.end());
    return places;
}

/// The height of the middle of its hanging shoots, to a tenth of a metre; blank: none hang.
std::optional<double> halfway_m(const Tree& tree, std::size_t limb)
{
    double low = 0.0;
    double high = 0.0;
    for (const auto& body : leafyBodies(tree)) {
        if (body.limb != limb || body.solid.hang_m <= 0.1)
            continue;
        const double bottom = lowestPoint(body.solid).z;
        const double top = bottom + body.solid.hang_m;
        low = high > 0.0 ? std::min(low, bottom) : bottom;
        high = std::max(high, top);
    }
    if (!(high > 0.0))
        return std::nullopt;
    return std::round(5.0 * (low + high)) / 10.0;
}

} // namespace

std::vector<Cut> singleCuts(const Tree& tree)
{
    const auto order = limbOrder(tree);
    const auto leafy = leafyLimbs(tree, order);
    const auto renewal = yearlyRenewal(tree.species);
    std::vector<Cut> cuts;
    for (const auto i : order.rootFirst) {
        const auto& limb = tree.limbs[i];
        if (i != order.trunk) {
            cuts.push_back({CutKind::removal, limb.id, 0.0, {}, {}, {}});
            for (const double at_m : reductions_m(tree, order, leafy, i))
                cuts.push_back({CutKind::reduction, limb.id, at_m, {}, {}, {}});
        }
        if (limb.foliage && limb.foliage->thinned < kLimbShareWarn)
            cuts.push_back({renewal ? CutKind::renewal : CutKind::thinning,
                            limb.id,
                            0.0,
                            {},
                            renewal ? renewal->most : kLimbShareWarn,
                            {}});
        if (const auto height = halfway_m(tree, i))
            cuts.push_back({CutKind::lifting, limb.id, 0.0, height, {}, {}});
    }
    return cuts;
}

} // namespace model::advice
