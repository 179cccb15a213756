#include "model/diary/growing_year.hpp"

#include "model/light/leaf_season.hpp"

namespace model::diary {
namespace {

using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::year_month_day;

bool isAfterFall(sys_days day, double halfFall, const Place& place)
{
    return light::dayOfNorthernYear(year_month_day{day}, place) > halfFall;
}

/// The newest day, `day` itself included, on which the leaves have just come down.
sys_days newestFall(sys_days day, double halfFall, const Place& place)
{
    while (!isAfterFall(day, halfFall, place) || isAfterFall(day - days{1}, halfFall, place))
        day -= days{1};
    return day;
}

} // namespace

GrowingYear growingYear(const LeafDates& seen, const Place& place, year_month_day date)
{
    const double halfFall = light::leafSeason(place, seen).halfFall;
    const auto from = newestFall(sys_days{date}, halfFall, place);
    // A year and a week later the next fall is past, but not the one after.
    const auto next = newestFall(from + days{372}, halfFall, place);
    // Half a year after leaf fall is early summer: its calendar year names the growing year.
    const auto summer = year_month_day{from + days{182}};
    return {static_cast<int>(summer.year()), year_month_day{from}, year_month_day{next - days{1}}};
}

} // namespace model::diary
