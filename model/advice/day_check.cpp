#include "model/advice/day_check.hpp"

#include <algorithm>
#include <cmath>

namespace model::advice {
namespace {

// US National Weather Service, heat index chart: 90 F extreme caution, 103 F danger; full sun adds
// up to 15 F. That work stops at 'danger' is this project's choice.
constexpr double kHeatCare_C = 32.2;
constexpr double kHeatStop_C = 39.4;
constexpr double kSunAdds_C = 8.3;
constexpr double kUnknownHumidity = 0.5;

// Newspaper and extension advice: bark that is bared burns in great heat.
constexpr double kTreeHeat_C = 38.0;

// Beaufort 5 and 23 mph: platform-hire and climbing practice.
constexpr double kWindCare_m_s = 8.0;
constexpr double kWindStop_m_s = 10.3;

constexpr double kFrost_C = 0.0;

double fahrenheit(double celsius)
{
    return celsius * 9.0 / 5.0 + 32.0;
}

double celsius(double fahrenheit)
{
    return (fahrenheit - 32.0) * 5.0 / 9.0;
}

double rothfusz_F(double t, double r)
{
    double index = -42.379 + 2.04901523 * t + 10.14333127 * r - 0.22475541 * t * r -
                   0.00683783 * t * t - 0.05481717 * r * r + 0.00122874 * t * t * r +
                   0.00085282 * t * r * r - 0.00000199 * t * t * r * r;
    if (r < 13.0 && t >= 80.0 && t <= 112.0)
        index -= (13.0 - r) / 4.0 * std::sqrt((17.0 - std::abs(t - 95.0)) / 17.0);
    if (r > 85.0 && t >= 80.0 && t <= 87.0)
        index += (r - 85.0) / 10.0 * (87.0 - t) / 5.0;
    return index;
}

void addOver(std::vector<DayFinding>& all, DayRule rule, double found, double care, double stop)
{
    if (found >= stop)
        all.push_back({rule, Severity::block, found, stop});
    else if (found >= care)
        all.push_back({rule, Severity::warn, found, care});
}

} // namespace

double heatIndex_C(double air_C, double humidity)
{
    const double t = fahrenheit(air_C);
    const double r = 100.0 * humidity;
    const double simple = 0.5 * (t + 61.0 + 1.2 * (t - 68.0) + 0.094 * r);
    const double mean = (simple + t) / 2.0;
    if (mean < 80.0)
        return t < 80.0 ? std::min(air_C, celsius(mean)) : celsius(mean);
    return celsius(rothfusz_F(t, r));
}

std::vector<DayFinding> dayCheck(const DayWeather& weather)
{
    std::vector<DayFinding> all;
    if (weather.air_C) {
        const double felt =
            heatIndex_C(*weather.air_C, weather.humidity.value_or(kUnknownHumidity));
        addOver(all, DayRule::heat, felt, kHeatCare_C, kHeatStop_C);
        addOver(all, DayRule::heatInSun, felt + kSunAdds_C, kHeatCare_C, kHeatStop_C);
        if (*weather.air_C >= kTreeHeat_C)
            all.push_back({DayRule::heatForTree, Severity::warn, *weather.air_C, kTreeHeat_C});
        if (*weather.air_C <= kFrost_C)
            all.push_back({DayRule::frost, Severity::warn, *weather.air_C, kFrost_C});
    }
    if (weather.gust_m_s)
        addOver(all, DayRule::wind, *weather.gust_m_s, kWindCare_m_s, kWindStop_m_s);
    std::ranges::stable_sort(all, std::ranges::greater(), &DayFinding::severity);
    return all;
}

DayLimit dayLimit(DayRule rule)
{
    switch (rule) {
    case DayRule::heat:
    case DayRule::heatInSun:
        return {kHeatCare_C, kHeatStop_C};
    case DayRule::heatForTree:
        return {kTreeHeat_C, std::nullopt};
    case DayRule::wind:
        return {kWindCare_m_s, kWindStop_m_s};
    case DayRule::frost:
        return {kFrost_C, std::nullopt};
    }
    return {};
}

const char* daySource(DayRule rule)
{
    switch (rule) {
    case DayRule::heat:
    case DayRule::heatInSun:
        return "US National Weather Service heat index chart (90 F, 103 F; up to 15 F more in full "
               "sun); to stop at 'danger' is this project's choice";
    case DayRule::heatForTree:
        return "newspaper and extension advice on cutting in great heat; weak source";
    case DayRule::wind:
        return "platform hire and climbing practice (23 mph); force 5 from memory";
    case DayRule::frost:
        return "common practice, no source";
    }
    return "";
}

} // namespace model::advice
