#include "model/growth/shoot_season.hpp"

#include "model/light/leaf_season.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace model::growth {
namespace {

using std::chrono::days;
using std::chrono::sys_days;

/// A day after bud burst and what has grown by then.
struct Done {
    double day{};
    double share{};
};

// Kramer 1943, Durham, North Carolina, where growth began at the end of March: by 1 May, 1 June
// and when it ceased, in July or early August.
constexpr std::array<Done, 4> kNorthernPines{{{0, 0}, {31, 0.65}, {62, 0.90}, {120, 1}}};
constexpr std::array<Done, 3> kOaks{{{0, 0}, {31, 0.50}, {120, 1}}};

// The same study on yellow-poplar: as much in each month from April to July, ceased in September.
constexpr double kSteady_days = 122.0;
constexpr double kCeased_days = 168.0;
constexpr double kLeafSeasonThere_days = 236.0; // light.md, L14, for the same place

double between(std::span<const Done> points, double day)
{
    for (std::size_t i = 1; i < points.size(); ++i)
        if (day < points[i].day)
            return std::lerp(points[i - 1].share, points[i].share,
                             (day - points[i - 1].day) / (points[i].day - points[i - 1].day));
    return 1.0;
}

/// A steady rate that then falls evenly to nothing.
double steadyThenFading(double day)
{
    constexpr double kFade_days = kCeased_days - kSteady_days;
    constexpr double kWhole = kSteady_days + kFade_days / 2.0;
    if (day <= kSteady_days)
        return day / kWhole;
    const double left = std::max(0.0, kCeased_days - day) / kFade_days;
    return 1.0 - left * left * kFade_days / 2.0 / kWhole;
}

/// A tree in leaf over the turn of the year has no spring that these patterns know.
light::LeafSeason seasonOf(const Place& place, const LeafDates& seen)
{
    const auto season = light::leafSeason(place, seen);
    return season.budBurst < season.halfFall ? season : light::leafSeason(place);
}

} // namespace

double extensionDone(ShootPattern pattern, double day, double leafSeason_days)
{
    if (day <= 0.0)
        return 0.0;
    switch (pattern) {
    case ShootPattern::shortFlush:
        return between(kNorthernPines, day);
    case ShootPattern::springFlush:
        return between(kOaks, day);
    case ShootPattern::longSeason:
        break;
    }
    return steadyThenFading(day * kLeafSeasonThere_days / leafSeason_days);
}

double growthClock(ShootPattern pattern, const Place& place, sys_days date, const LeafDates& seen)
{
    const auto season = seasonOf(place, seen);
    const double day = light::dayOfNorthernYear(std::chrono::year_month_day{date}, place);
    // The growing year is named by the calendar year in which its day 1 lies.
    const auto dayOne = date - days{static_cast<int>(std::lround(day)) - 1};
    const auto year = static_cast<int>(std::chrono::year_month_day{dayOne + days{15}}.year());
    return year + extensionDone(pattern, day - season.budBurst, season.halfFall - season.budBurst);
}

sys_days grownBy(ShootPattern pattern, const Place& place, sys_days from, double years,
                 const LeafDates& seen)
{
    const double wanted = growthClock(pattern, place, from, seen) + years;
    sys_days before = from;
    sys_days after = from + days{20 * 366};
    if (growthClock(pattern, place, after, seen) < wanted)
        return after;
    while (after - before > days{1}) {
        const sys_days middle = before + (after - before) / 2;
        (growthClock(pattern, place, middle, seen) < wanted ? before : after) = middle;
    }
    return after;
}

} // namespace model::growth
