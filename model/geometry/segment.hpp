#pragma once

#include "model/geometry/vec3.hpp"

namespace model {

/// Least distance between two straight pieces in space, m. A piece of no length is a point.
[[nodiscard]] double segmentDistance_m(Vec3 a0, Vec3 a1, Vec3 b0, Vec3 b1);

/// Least distance from a point to a straight piece, m.
[[nodiscard]] double pointToSegment_m(Vec3 point, Vec3 a, Vec3 b);

} // namespace model
