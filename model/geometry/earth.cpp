#include "model/geometry/earth.hpp"

#include "model/geometry/angle.hpp"

namespace model {
namespace {

// WGS 84 by definition (NIMA TR8350.2, 2000): semi-major axis and flattening.
constexpr double kAxis_m = 6378137.0;
constexpr double kFlattening = 1.0 / 298.257223563;
constexpr double kEccentricity2 = kFlattening * (2.0 - kFlattening);

/// Radius of curvature across the meridian.
double crossRadius_m(double sinLatitude)
{
    return kAxis_m / std::sqrt(1.0 - kEccentricity2 * sinLatitude * sinLatitude);
}

} // namespace

EarthPlace onEarth(EarthPlace origin, Point2 place_m)
{
    const double latitude = radians(origin.latitude_deg);
    const double sinLat = std::sin(latitude);
    const double cosLat = std::cos(latitude);
    const double radius_m = crossRadius_m(sinLat);
    // Earth-centred, turned so that the origin lies over the x axis.
    const double x = radius_m * cosLat - sinLat * place_m.y;
    const double y = place_m.x;
    const double z = radius_m * (1.0 - kEccentricity2) * sinLat + cosLat * place_m.y;
    const double fromAxis = std::hypot(x, y);
    double down = latitude; // each round is closer by a factor of some 150
    for (int round = 0; round < 8; ++round)
        down = std::atan2(z + kEccentricity2 * crossRadius_m(std::sin(down)) * std::sin(down),
                          fromAxis);
    double longitude_deg = origin.longitude_deg + degrees(std::atan2(y, x));
    if (longitude_deg > 180.0)
        longitude_deg -= 360.0;
    if (longitude_deg < -180.0)
        longitude_deg += 360.0;
    return {degrees(down), longitude_deg};
}

} // namespace model
