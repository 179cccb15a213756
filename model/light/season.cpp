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

constexpr double kYear_days = 365.0;

/// From one day of the year round to another.
double daysAfter(double from, double to)
{
    return to < from ? to - from + kYear_days : to - from;
}

double deciduousShare(const LeafSeason& season, double day)
{
    constexpr double kUnfolding_days = 25.0;
    constexpr double kHalfFalling_days = 14.0;
    const double sinceBurst = daysAfter(season.budBurst, day);
    const double inLeaf = daysAfter(season.budBurst, season.halfFall);
    const double out = sinceBurst / kUnfolding_days;
    const double left = (inLeaf + kHalfFalling_days - sinceBurst) / (2.0 * kHalfFalling_days);
    return std::clamp(std::min(out, left), 0.0, 1.0);
}

/// Of the dead leaf that a tree holds: all of it from when its leaves turn until the new buds push
/// it off, none while they unfold from bare twigs.
double heldDead(const LeafSeason& season, double day)
{
    const double sinceBurst = daysAfter(season.budBurst, day);
    return sinceBurst < daysAfter(season.budBurst, season.halfFall) ? 0.0 : 1.0;
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
    return shifted > kYear_days ? shifted - kYear_days : shifted;
}

LeafSeason leafSeason(const Place& place, const LeafDates& seen)
{
    LeafSeason season = leafSeason(place);
    const auto northern = [&](std::chrono::month_day day) {
        return dayOfNorthernYear(std::chrono::year{2001} / day.month() / day.day(), place);
    };
    if (seen.on)
        season.budBurst = northern(*seen.on);
    if (seen.off)
        season.halfFall = northern(*seen.off);
    // One date alone may leave the rule's other too near, or behind.
    if (seen.on && !seen.off)
        season.halfFall = std::max(season.halfFall, season.budBurst + kShortestSummer);
    if (seen.off && !seen.on)
        season.budBurst = std::min(season.budBurst, season.halfFall - kShortestSummer);
    return season;
}

double greenShare(const Species& species, const Place& place, std::chrono::year_month_day date,
                  const LeafDates& seen)
{
    const auto habit = species.practice.leafHabit;
    if (habit == LeafHabit::evergreen)
        return 1.0;
    const double share = deciduousShare(leafSeason(place, seen), dayOfNorthernYear(date, place));
    constexpr double kKeptBySemiEvergreens = 0.5; // assumed
    return habit == LeafHabit::semiEvergreen ? std::max(kKeptBySemiEvergreens, share) : share;
}

double leafShare(const Species& species, const Place& place, std::chrono::year_month_day date,
                 const LeafDates& seen)
{
    const double green = greenShare(species, place, date, seen);
    const double held = heldDead(leafSeason(place, seen), dayOfNorthernYear(date, place)) *
                        (species.leaf.keptDeadLeaf ? species.leaf.keptDeadLeaf->value : 0.0);
    return std::max(green, held);
}

} // namespace model::light
