#pragma once

#include "model/crown/leafy_bodies.hpp"
#include "model/geometry/polygon.hpp"

#include <vector>

namespace model {

/// Leafy bodies as seen from above, few rather than many: bodies of one limb that follow each other
/// on one straight line of the plan are one outline, which covers what theirs do together. Unions
/// of polygons cost by the number of them.
[[nodiscard]] std::vector<Polygon> planOutlines(const std::vector<LeafyBody>& bodies);

} // namespace model
