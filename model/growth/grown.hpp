#pragma once

#include "model/garden/tree.hpp"

namespace model::growth {

/// The tree after its shoots have grown so much longer (G5): hanging shoots downward, other leafy
/// twigs outward by their share of it (G2), the leaf that they bear spread over the wider body.
/// Wood is taken to stay as thick as it is. Dead limbs stay as they are.
/// \param shoot_m  growth of an ordinary shoot, >= 0
[[nodiscard]] Tree grown(const Tree& tree, double shoot_m);

} // namespace model::growth
