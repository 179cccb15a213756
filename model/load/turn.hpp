#pragma once

#include "model/geometry/vec3.hpp"

#include <cmath>

namespace model::load {

/// A turn in space: where the three axes go.
struct Turn {
    Vec3 x{1.0, 0.0, 0.0};
    Vec3 y{0.0, 1.0, 0.0};
    Vec3 z{0.0, 0.0, 1.0};

    /// The vector, turned along.
    [[nodiscard]] Vec3 of(Vec3 v) const { return v.x * x + v.y * y + v.z * z; }
    /// The vector, turned back.
    [[nodiscard]] Vec3 back(Vec3 v) const { return {dot(v, x), dot(v, y), dot(v, z)}; }
    /// First `first`, given in the turned axes, then this.
    [[nodiscard]] Turn after(const Turn& first) const
    {
        return {of(first.x), of(first.y), of(first.z)};
    }
};

/// The turn about the axis of `angle_rad` by its length (Rodrigues' formula).
[[nodiscard]] inline Turn turnBy(Vec3 angle_rad)
{
    const double angle = norm(angle_rad);
    const double sine = angle > 1e-8 ? std::sin(angle) / angle : 1.0;
    const double cosine = angle > 1e-8 ? (1.0 - std::cos(angle)) / (angle * angle) : 0.5;
    const auto turned = [&](Vec3 v) {
        const Vec3 once = cross(angle_rad, v);
        return v + sine * once + cosine * cross(angle_rad, once);
    };
    return {turned({1.0, 0.0, 0.0}), turned({0.0, 1.0, 0.0}), turned({0.0, 0.0, 1.0})};
}

} // namespace model::load
