#include "model/diary/window.hpp"

#include "model/advice/allowance.hpp"

#include <algorithm>

namespace model::diary {

std::optional<Window> goodWindow(const Species& species, double latitude_deg,
                                 std::chrono::year_month_day date)
{
    const auto& best = species.practice.bestMonthsNorth;
    return monthRun(date, [&](std::chrono::month month) {
        return std::ranges::find(best, advice::northernMonth(month, latitude_deg)) != best.end();
    });
}

} // namespace model::diary
