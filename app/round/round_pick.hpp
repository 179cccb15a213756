#pragma once

#include "app/round/round_camera.hpp"

namespace app {

/// Wood of a tree that a look meets.
struct RoundPick {
    std::size_t limb{};  ///< index into Tree::limbs
    double at_m{};       ///< along the limb from its union
    double distance_m{}; ///< from the eye
};

/// The nearest wood that the look goes through; else what it passes by least, within `reach_m` of
/// the bark. Nothing if it passes all of it by. Wood behind the eye is not met.
/// \param foot_m  of the tree, garden frame
[[nodiscard]] std::optional<RoundPick> pickWood(const model::Tree& tree, model::Vec3 foot_m,
                                                const Sight& sight, double reach_m);

} // namespace app
