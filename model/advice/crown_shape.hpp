#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/tree.hpp"

namespace model::advice {

/// How a crown sits on its stem.
struct CrownShape {
    double base_m{};             ///< height of the lowest leaf above the ground
    double top_m{};              ///< height of the highest leaf or wood
    double liveCrownRatio{};     ///< (top - base) / top
    double lowerTwoThirdsLeaf{}; ///< share of the leaf in the lower two thirds of the crown
};

/// Leaf counts as spread evenly over the height of each leafy body.
/// All zero for a tree without leaves.
[[nodiscard]] CrownShape crownShape(const Tree& tree, const Foliation& foliation);

} // namespace model::advice
