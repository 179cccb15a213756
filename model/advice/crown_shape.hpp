#pragma once

#include "model/advice/rule.hpp"
#include "model/crown/foliage.hpp"
#include "model/garden/tree.hpp"

#include <vector>

namespace model::advice {

/// How a crown sits on its stem.
struct CrownShape {
    double base_m{};             ///< height of the lowest leaf above the ground
    double top_m{};              ///< height of the highest leaf or wood
    double liveCrownRatio{};     ///< (top - base) / top
    double lowerTwoThirdsLeaf{}; ///< share of the leaf in the lower two thirds of the crown
    Point2
        leafAside_m{}; ///< of the middle of the leaf, which the wind takes hold of, from the foot
    Point2 woodAside_m{}; ///< of the middle of the limbs' wood, the stem's left out
    double reach_m{};     ///< of the leaf from the stem, mean of eight directions
};

/// How much further a crown's weight or its hold on the wind has moved away from the stem,
/// whichever did so more, as a share of the crown's reach before; 0 or less: nearer.
[[nodiscard]] double movedAside(const CrownShape& before, const CrownShape& after);

/// What is to be told of a change of the crown that no rule forbids.
/// \param share  of the tree's leaf that goes
[[nodiscard]] std::vector<Finding> crownNotes(const CrownShape& before, const CrownShape& after,
                                              double share);

/// Leaf counts as spread evenly over the height of each leafy body.
/// All zero for a tree without leaves.
[[nodiscard]] CrownShape crownShape(const Tree& tree, const Foliation& foliation);

} // namespace model::advice
