#pragma once

#include "model/garden/ground.hpp"
#include "model/garden/neighbour.hpp"
#include "model/garden/tree.hpp"
#include "model/geometry/curtain.hpp"
#include "model/geometry/ellipsoid.hpp"
#include "model/geometry/polygon.hpp"
#include "model/light/sun.hpp"

#include <vector>

namespace model::light {

/// The shadow on the ground, as seen on plan, of the part of a solid that is above it (L17):
/// convex, with the area of the true outline to 0.1 %. Empty for a solid in the ground, and when
/// the sun is behind the hill. \param towards  unit, towards the sun, pointing up
[[nodiscard]] Polygon shadowOutline(const Curtain& solid, Vec3 towards, const Ground& ground = {});

/// The same of a crown that is drawn as one body and stands clear of the ground.
[[nodiscard]] Polygon shadowOutline(const Ellipsoid& crown, Vec3 towards,
                                    const Ground& ground = {});

/// The shadow of a neighbour: its crown's and its stem's. Empty below 2 degrees.
[[nodiscard]] Region shadow(const Neighbour& neighbour, const SunPosition& sun,
                            const Ground& ground = {});

/// The shadow of one limb of a tree, its own leaf and wood. \param tree_m  the tree's position
[[nodiscard]] Region shadow(const Limb& limb, Point2 tree_m, const SunPosition& sun,
                            const Ground& ground = {});

} // namespace model::light
