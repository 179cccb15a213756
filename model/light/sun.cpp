#include "model/light/sun.hpp"

#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>

namespace model::light {
namespace {

double sine(double angle_deg)
{
    return std::sin(radians(angle_deg));
}
double cosine(double angle_deg)
{
    return std::cos(radians(angle_deg));
}
double wrapped_deg(double angle_deg) // 0..360
{
    const double rest = std::fmod(angle_deg, 360.0);
    return rest < 0.0 ? rest + 360.0 : rest;
}

/// Days since 2000 January 1, 12:00 (Julian date 2451545.0).
double daysSince2000(Instant when)
{
    using namespace std::chrono;
    constexpr sys_days kNoon2000{year{2000} / January / 1};
    const auto past = when - (kNoon2000 + hours{12});
    return duration<double, days::period>(past).count();
}

/// The pull of Venus, Jupiter and the moon on the earth's longitude, degrees (L3).
/// `T` in Julian centuries since 2000; the terms were published for centuries since 1900.
double perturbation_deg(double T)
{
    const double since1900 = T + 1.0;
    return 0.00134 * cosine(153.23 + 22518.7541 * since1900) +
           0.00154 * cosine(216.57 + 45037.5082 * since1900) +
           0.00200 * cosine(312.69 + 32964.3577 * since1900) +
           0.00179 * sine(350.74 + 445267.1142 * since1900 - 0.00144 * since1900 * since1900) +
           0.00178 * sine(231.19 + 20.20 * since1900);
}

} // namespace

SunInSky sunInSky(double T)
{
    // Symbols as in Meeus 1998, chapter 25; all angles in degrees.
    const double L0 = 280.46646 + T * (36000.76983 + 0.0003032 * T);
    const double M = 357.52911 + T * (35999.05029 - 0.0001537 * T);
    const double e = 0.016708634 - T * (0.000042037 + 0.0000001267 * T);
    const double C = (1.914602 - T * (0.004817 + 0.000014 * T)) * sine(M) +
                     (0.019993 - 0.000101 * T) * sine(2.0 * M) + 0.000289 * sine(3.0 * M);
    const double trueLongitude = L0 + C + perturbation_deg(T);
    const double Omega = 125.04 - 1934.136 * T;
    const double lambda = trueLongitude - 0.00569 - 0.00478 * sine(Omega);
    const double epsilon = 23.4392911 - T * (0.0130042 + T * (0.000000164 - 0.000000504 * T)) +
                           0.00256 * cosine(Omega);
    return {wrapped_deg(degrees(std::atan2(cosine(epsilon) * sine(lambda), cosine(lambda)))),
            degrees(std::asin(sine(epsilon) * sine(lambda))),
            1.000001018 * (1.0 - e * e) / (1.0 + e * cosine(M + C)),
            -0.00478 * sine(Omega) * cosine(epsilon)};
}

SunPosition sunPosition(Instant when, double latitude_deg, double longitude_deg)
{
    // Terrestrial time runs ahead of clock time by about 69 s now; taking that for the whole
    // century costs at most 0.001 degree.
    constexpr double kClockLag_days = 69.0 / 86400.0;
    constexpr double kDaysPerCentury = 36525.0;
    const double D = daysSince2000(when);
    const auto sun = sunInSky((D + kClockLag_days) / kDaysPerCentury);
    const double Tu = D / kDaysPerCentury;
    const double siderealTime = 280.46061837 + 360.98564736629 * D +
                                Tu * Tu * (0.000387933 - Tu / 38710000.0) + sun.equinoxes_deg;
    const double H = wrapped_deg(siderealTime + longitude_deg - sun.rightAscension_deg);
    const double sinLatitude = sine(latitude_deg);
    const double cosLatitude = cosine(latitude_deg);
    const double sinDeclination = sine(sun.declination_deg);
    const double cosDeclination = cosine(sun.declination_deg);
    const double sinElevation =
        sinLatitude * sinDeclination + cosLatitude * cosDeclination * cosine(H);
    const double airless = degrees(std::asin(std::clamp(sinElevation, -1.0, 1.0)));
    const double parallax = 0.00244 / sun.distance_au * cosine(airless);
    const double azimuth = 180.0 + degrees(std::atan2(sine(H) * cosDeclination,
                                                      cosine(H) * sinLatitude * cosDeclination -
                                                          sinDeclination * cosLatitude));
    return {airless - parallax, wrapped_deg(azimuth), sun.distance_au};
}

double refraction_deg(double elevation_deg)
{
    // Below the horizon the formula soon runs into its pole; there its value at -1 degree stands.
    const double h = std::max(-1.0, elevation_deg);
    const double arcMinutes = 1.02 / std::tan(radians(h + 10.3 / (h + 5.11)));
    return std::max(0.0, arcMinutes / 60.0); // within a degree of the zenith it turns negative
}

Vec3 towardsSun(const SunPosition& sun)
{
    const double level = cosine(sun.elevation_deg);
    return {level * sine(sun.azimuth_deg), level * cosine(sun.azimuth_deg),
            sine(sun.elevation_deg)};
}

} // namespace model::light
