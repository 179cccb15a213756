#include "model/diary/storm_season.hpp"

#include <algorithm>
#include <cmath>

namespace model::diary {
namespace {

// Where tropical storms give way to the gales of the westerlies; assumed.
constexpr double kTropicalStorms_deg = 35.0;

} // namespace

std::vector<int> stormMonths(const Place& place)
{
    if (!place.stormMonths.empty())
        return place.stormMonths;
    const bool north = place.latitude_deg >= 0.0;
    if (std::abs(place.latitude_deg) < kTropicalStorms_deg)
        return north ? std::vector{6, 7, 8, 9, 10, 11} : std::vector{11, 12, 1, 2, 3, 4};
    return north ? std::vector{10, 11, 12, 1, 2, 3} : std::vector{4, 5, 6, 7, 8, 9};
}

std::optional<Window> stormSeason(const Place& place, std::chrono::year_month_day date)
{
    const auto months = stormMonths(place);
    return monthRun(date, [&](std::chrono::month month) {
        const auto number = static_cast<int>(static_cast<unsigned>(month));
        return std::ranges::find(months, number) != months.end();
    });
}

} // namespace model::diary
