#pragma once

#include "model/headroom/headroom.hpp"

#include <cstddef>
#include <optional>

namespace model::headroom {

/// The place that sets the headroom over a strip, taken apart: the height there is the axis of the
/// limb, less what its wood or leafy body reaches below it, less its hanging shoots (H1).
struct LowestPlace {
    std::size_t limb{}; ///< index into Tree::limbs
    bool isLeaf{};      ///< of the leafy body or its shoots; else of the wood
    Point2 at_m{};      ///< garden frame
    double axis_m{};    ///< height of the limb's axis from which that place hangs
    double reach_m{};   ///< that wood or leaf reaches below the axis there, >= 0
    double hang_m{};    ///< of the shoots below that, >= 0
    double height_m{};  ///< what is left, not below 0
};

/// The lowest wood, leaf or shoot of a tree over a strip; nothing where none overhangs it.
/// \param strip  garden frame
[[nodiscard]] std::optional<LowestPlace> lowestPlace(const Tree& tree, const Polygon& strip);

} // namespace model::headroom
