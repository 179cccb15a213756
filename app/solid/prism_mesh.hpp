#pragma once

#include "app/solid/mesh.hpp"
#include "model/geometry/polygon.hpp"

#include <functional>

namespace app {

/// Height over the garden's z = 0 at a place on plan, m; a plane.
using HeightAt = std::function<double(model::Point2)>;

/// The closed solid over an outline without fault, with upright walls from one plane up to another.
/// \pre  top_m lies above bottom_m at every corner
[[nodiscard]] Mesh prismMesh(const model::Polygon& outline, const HeightAt& bottom_m,
                             const HeightAt& top_m);

} // namespace app
