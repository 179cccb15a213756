#pragma once

#include "model/geometry/vec3.hpp"

#include <cmath>

namespace app {

/// Places nearer than this are one place.
inline constexpr double kOnePlace_m = 1e-9;

/// \pre  v has a length
inline model::Vec3 unit(model::Vec3 v)
{
    return (1.0 / norm(v)) * v;
}

/// A direction square to `along`, which has length one.
inline model::Vec3 squareTo(model::Vec3 along)
{
    const model::Vec3 other =
        std::abs(along.z) < 0.9 ? model::Vec3{0.0, 0.0, 1.0} : model::Vec3{1.0, 0.0, 0.0};
    return unit(cross(along, other));
}

} // namespace app
