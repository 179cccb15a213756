#pragma once

#include "model/geometry/vec3.hpp"

#include <cmath>
#include <numbers>

namespace model {

inline constexpr double kRadiansPerDegree = std::numbers::pi / 180.0;

constexpr double radians(double angle_deg)
{
    return angle_deg * kRadiansPerDegree;
}
constexpr double degrees(double angle_rad)
{
    return angle_rad / kRadiansPerDegree;
}

/// The level unit vector that points along a compass bearing (degrees clockwise from north).
inline Vec3 bearingDirection(double bearing_deg)
{
    return {std::sin(radians(bearing_deg)), std::cos(radians(bearing_deg)), 0.0};
}

} // namespace model
