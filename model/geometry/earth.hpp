#pragma once

#include "model/geometry/vec3.hpp"

namespace model {

/// A place on the earth, WGS 84, degrees.
struct EarthPlace {
    double latitude_deg{};
    double longitude_deg{}; ///< -180..180
};

/// Where a place on a garden's plan lies on the earth: the plan is the plane that touches the
/// WGS 84 ellipsoid at the garden's origin, and each of its points goes straight down to the
/// ellipsoid (docs/methods/document.md). Within 1 km of the origin a distance on the plan and the
/// true one differ by less than 0.01 mm.
/// \pre  |origin.latitude_deg| < 90
[[nodiscard]] EarthPlace onEarth(EarthPlace origin, Point2 place_m);

} // namespace model
