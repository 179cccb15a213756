#include "model/light/leaf_season.hpp"

#include "model/light/daylight.hpp"

#include <algorithm>
#include <cmath>

namespace model::light {
namespace {

/// A place whose dates are known, from memory and with low confidence (docs/methods/light.md, L14).
struct Anchor {
    double latitude_deg{};
    double longitude_deg{};
    LeafSeason season;
};
constexpr Anchor kNewEngland{42.5, -71.0, {122.0, 292.0}};
constexpr Anchor kEngland{51.5, 0.0, {112.0, 316.0}};

// No place that Hopkins' rule may reach for has a leafless winter shorter than about 7 weeks or a
// summer shorter than 8; assumed, since the rule has no end of its own.
constexpr double kEarliestBurst = 60.0;
constexpr double kLatestFall = 345.0;
constexpr double kShortestSummer = 56.0;

bool inNorthAmerica(const Place& place)
{
    return place.latitude_deg > 0.0 && place.longitude_deg < -30.0;
}

double deciduousShare(const LeafSeason& season, double day)
{
    constexpr double kUnfolding_days = 25.0;
    constexpr double kHalfFalling_days = 14.0;
    const double out = (day - season.budBurst) / kUnfolding_days;
    const double left = (season.halfFall + kHalfFalling_days - day) / (2.0 * kHalfFalling_days);
    return std::clamp(std::min(out, left), 0.0, 1.0);
}

} // namespace

LeafSeason leafSeason(const Place& place)
{
    const bool america = inNorthAmerica(place);
    const bool farEast = place.latitude_deg > 0.0 && place.longitude_deg > 60.0;
    const Anchor& anchor = america || farEast ? kNewEngland : kEngland;
    const double east = america ? (place.longitude_deg - anchor.longitude_deg) / 5.0 : 0.0;
    const double polewards = std::abs(place.latitude_deg) - anchor.latitude_deg;
    const double later = 4.0 * (polewards + east + std::max(0.0, place.altitude_m) / 121.92);
    LeafSeason season{std::max(kEarliestBurst, anchor.season.budBurst + later),
                      std::min(kLatestFall, anchor.season.halfFall - later)};
    if (season.halfFall - season.budBurst < kShortestSummer) {
        const double middle = (season.halfFall + season.budBurst) / 2.0;
        season = {middle - kShortestSummer / 2.0, middle + kShortestSummer / 2.0};
    }
    return season;
}

double dayOfNorthernYear(std::chrono::year_month_day date, const Place& place)
{
    using namespace std::chrono;
    const auto day = (sys_days{date} - sys_days{date.year() / January / 1}).count() + 1;
    constexpr double kHalfYear = 182.0;
    const double shifted = static_cast<double>(day) + (place.latitude_deg < 0.0 ? kHalfYear : 0.0);
    return shifted > 365.0 ? shifted - 365.0 : shifted;
}

double leafShare(const Species& species, const Place& place, std::chrono::year_month_day date)
{
    const auto habit = species.practice.leafHabit;
    if (habit == LeafHabit::evergreen)
        return 1.0;
    const double share = deciduousShare(leafSeason(place), dayOfNorthernYear(date, place));
    constexpr double kKeptBySemiEvergreens = 0.5; // assumed
    return habit == LeafHabit::semiEvergreen ? std::max(kKeptBySemiEvergreens, share) : share;
}

} // namespace model::light
