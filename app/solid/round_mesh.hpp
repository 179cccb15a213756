#pragma once

#include "app/solid/mesh.hpp"
#include "model/geometry/curtain.hpp"
#include "model/geometry/ellipsoid.hpp"

namespace app {

/// The surface of a leafy body: round edges about the corners of its swept parallelogram, straight
/// between them. All places lie on the true surface.
/// \param steps  straight pieces for a quarter turn, >= 1
[[nodiscard]] Mesh roundMesh(const model::Curtain& curtain, int steps = 4);

/// The surface of an ellipsoid, places on it.
[[nodiscard]] Mesh roundMesh(const model::Ellipsoid& ellipsoid, int steps = 6);

} // namespace app
