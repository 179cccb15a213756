#pragma once

#include "model/advice/suggestion.hpp"

#include <vector>

namespace model::advice {

/// What comes down with one cut: its shapes and where it hangs before it is cut.
struct FallingPart {
    Vec3 cut_m{};                   ///< where the saw goes, tree frame
    std::vector<Curtain> solids;    ///< wood and leafy bodies, tree frame
    std::vector<std::size_t> limbs; ///< indices of the limbs that go, whole or in part
};

/// \pre  the cut names a limb of the tree
[[nodiscard]] FallingPart fallingPart(const Tree& tree, const Cut& cut);

/// Measures of one cut on a tree that earlier cuts of the plan have already been made on.
/// `notes` and `labour` are filled in as well.
[[nodiscard]] PlannedCut plannedCut(const Garden& garden, const Tree& tree, const Cut& cut,
                                    const Foliation& foliation, const Species& species);

} // namespace model::advice
