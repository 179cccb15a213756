#pragma once

#include "model/garden/place.hpp"
#include "model/geometry/vec3.hpp"

#include <chrono>

namespace model::light {

/// An instant in UTC, to the millisecond.
using Instant = std::chrono::sys_time<std::chrono::milliseconds>;

/// Where the sun stands, seen from a place on the earth.
struct SunPosition {
    double elevation_deg{}; ///< of the centre, without refraction, topocentric
    double azimuth_deg{};   ///< clockwise from north, 0..360
    double distance_au{};
    friend bool operator==(const SunPosition&, const SunPosition&) = default;
};

/// Where the sun stands among the stars, seen from the middle of the earth.
struct SunInSky {
    double rightAscension_deg{}; ///< apparent, 0..360
    double declination_deg{};    ///< apparent
    double distance_au{};
    double equinoxes_deg{}; ///< equation of the equinoxes: what nutation adds to sidereal time
};

/// \param centuries  Julian centuries of terrestrial time since 2000 January 1, 12:00
[[nodiscard]] SunInSky sunInSky(double centuries);

/// Good to 0.01 degree for 2000-2100 (docs/methods/light.md, L1; Meeus 1998).
[[nodiscard]] SunPosition sunPosition(Instant when, double latitude_deg, double longitude_deg);

/// What refraction adds to an elevation, degrees (Saemundsson 1986), at 1010 hPa and 10 C.
[[nodiscard]] double refraction_deg(double elevation_deg);

/// Unit vector from the ground towards the sun.
[[nodiscard]] Vec3 towardsSun(const SunPosition& sun);

} // namespace model::light
