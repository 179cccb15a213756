#include "model/sketch/measured_height.hpp"

#include "model/geometry/angle.hpp"

#include <cmath>

namespace model::sketch {

std::optional<double> height_m(const Shadows& s)
{
    if (!(s.stick_m > 0.0) || !(s.stickShadow_m > 0.0) || !(s.treeShadow_m > 0.0))
        return std::nullopt;
    return s.treeShadow_m * s.stick_m / s.stickShadow_m;
}

std::optional<double> height_m(const Sighting& s)
{
    constexpr double kSteepest_deg = 85.0; // a degree more or less would double the height
    if (!(s.angle_deg > 0.0 && s.angle_deg < kSteepest_deg) || !(s.distance_m > 0.0) ||
        !(s.eye_m >= 0.0))
        return std::nullopt;
    return s.distance_m * std::tan(radians(s.angle_deg)) + s.eye_m;
}

} // namespace model::sketch
