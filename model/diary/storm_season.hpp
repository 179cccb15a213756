#pragma once

#include "model/diary/window.hpp"
#include "model/garden/place.hpp"

#include <vector>

namespace model::diary {

/// Months in which storms come to a place, 1..12: the gardener's own, else by latitude (D6).
[[nodiscard]] std::vector<int> stormMonths(const Place& place);

/// The storm season that holds `date`, or the next one; blank: storms come all the year round.
[[nodiscard]] std::optional<Window> stormSeason(const Place& place,
                                                std::chrono::year_month_day date);

/// Days before the storm season within which the tree is to be looked at, and within which a visit
/// counts as having done so. Assumed.
inline constexpr int kLookBefore_days = 30;
inline constexpr int kLookedBefore_days = 90;

} // namespace model::diary
