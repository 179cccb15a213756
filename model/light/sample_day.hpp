#pragma once

#include "model/garden/place.hpp"

#include <chrono>
#include <vector>

namespace model::light {

/// A day that stands for a share of the time looked at.
struct SampleDay {
    std::chrono::year_month_day date{};
    double weight{}; ///< all of them together: 1
};

/// April to September; south of the equator October to March.
[[nodiscard]] bool inGrowingSeason(std::chrono::month month, const Place& place);

/// Sample days of one month, each the middle of an equal part of it; weights sum to 1.
[[nodiscard]] std::vector<SampleDay> daysOfMonth(std::chrono::year_month month, int count);

/// Sample days of the growing season; south of the equator both its ends lie in the same calendar
/// year.
[[nodiscard]] std::vector<SampleDay> daysOfGrowingSeason(const Place& place, std::chrono::year year,
                                                         int daysPerMonth);

} // namespace model::light
