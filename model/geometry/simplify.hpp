#pragma once

#include "model/geometry/vec3.hpp"

#include <span>
#include <vector>

namespace model {

/// Indices of the points that keep a polyline within `tolerance_m` of all the others, ends
/// included (Douglas & Peucker 1973, as Boost.Geometry has it). Two or fewer points are kept.
[[nodiscard]] std::vector<std::size_t> simplified(std::span<const Point2> line, double tolerance_m);

} // namespace model
