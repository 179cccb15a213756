#pragma once

#include "model/geometry/curtain.hpp"
#include "model/geometry/polygon.hpp"

namespace model::light {

/// The shadow on level ground at z = 0 of the part of a solid that is above it (L17): convex, with
/// the area of the true outline to 0.1 %. Empty for a solid in the ground.
/// \param towards  unit, towards the sun, pointing up
[[nodiscard]] Polygon shadowOutline(const Curtain& solid, Vec3 towards);

} // namespace model::light
