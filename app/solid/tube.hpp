#pragma once

#include "app/solid/mesh.hpp"

#include <span>

namespace app {

/// A place along the middle of a tube.
struct TubeRing {
    model::Vec3 middle_m{};
    double radius_m{}; ///< > 0
};

/// A closed tube round a path: rings of `sides` places, each square to the path, joined by straight
/// walls, with flat ends. Rings that lie on the one before are left out.
/// \returns nothing at all if fewer than two rings are left
/// \throws std::domain_error  for fewer than three sides or a radius that is not positive
[[nodiscard]] Mesh tube(std::span<const TubeRing> path, int sides = 12);

} // namespace app
