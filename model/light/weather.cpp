#include "model/light/weather.hpp"

#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace model::light {
namespace {

double declination_rad(int dayOfYear)
{
    return 0.409 * std::sin(2.0 * std::numbers::pi / 365.0 * dayOfYear - 1.39);
}

double sunset_rad(double latitude_rad, double declination)
{
    return std::acos(std::clamp(-std::tan(latitude_rad) * std::tan(declination), -1.0, 1.0));
}

} // namespace

Weather weatherAt(const Place& place)
{
    Weather weather;
    const auto months = std::min(place.sunshineShare.size(), weather.sunshineShare.size());
    for (std::size_t month = 0; month < months; ++month)
        weather.sunshineShare[month] = place.sunshineShare[month];
    return weather;
}

double extraterrestrial_MJ_m2(double latitude_deg, int dayOfYear)
{
    constexpr double kSolarConstant_MJ_m2_min = 0.0820;
    const double latitude = radians(latitude_deg);
    const double d = declination_rad(dayOfYear);
    const double ws = sunset_rad(latitude, d);
    const double dr = 1.0 + 0.033 * std::cos(2.0 * std::numbers::pi / 365.0 * dayOfYear);
    const double day = 24.0 * 60.0 / std::numbers::pi * kSolarConstant_MJ_m2_min * dr;
    return std::max(0.0, day * (ws * std::sin(latitude) * std::sin(d) +
                                std::cos(latitude) * std::cos(d) * std::sin(ws)));
}

double monthlyDiffuseShare(double clearness, double sunset_deg)
{
    // Fitted for clearness from 0.3 to 0.8; outside, the ends stand.
    const double K = std::clamp(clearness, 0.3, 0.8);
    return sunset_deg <= 81.4 ? 1.391 - K * (3.560 - K * (4.189 - K * 2.137))
                              : 1.311 - K * (3.022 - K * (3.427 - K * 1.821));
}

DayEnergy cloudyDay(double latitude_deg, int dayOfYear, double sunshineShare)
{
    if (!(sunshineShare >= 0.0 && sunshineShare <= 1.0))
        throw std::domain_error("cloudyDay: the share of bright sunshine lies between 0 and 1");
    const double clearness = 0.25 + 0.50 * sunshineShare;
    const double energy = clearness * extraterrestrial_MJ_m2(latitude_deg, dayOfYear);
    const double sunset = sunset_rad(radians(latitude_deg), declination_rad(dayOfYear));
    const double diffuse = energy * monthlyDiffuseShare(clearness, degrees(sunset));
    return {energy - diffuse, diffuse};
}

} // namespace model::light
