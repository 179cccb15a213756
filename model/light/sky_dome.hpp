#pragma once

#include "model/geometry/vec3.hpp"

#include <vector>

namespace model::light {

/// Directions that share the upper half of the sky in equal parts of solid angle, 2 pi / count
/// each: points of a golden-angle spiral (docs/methods/light.md, L23).
[[nodiscard]] std::vector<Vec3> skyDirections(int count);

/// Share of the light that an even sky gives level ground which comes to a surface from one of
/// `count` such directions. Over all directions: 1 for level ground, 1/2 for an upright face.
/// \param facing  unit, normal to the surface
[[nodiscard]] double skyShare(Vec3 towards, Vec3 facing, int count);

} // namespace model::light
