#pragma once

#include "model/garden/place.hpp"
#include "model/garden/tree.hpp"

#include <chrono>

namespace model::diary {

/// The year of a tree from one leaf fall to the next: what is cut in its winter is missing in its
/// summer (D1).
struct GrowingYear {
    int year{}; ///< calendar year of its summer; where that spans two (south), the first
    std::chrono::year_month_day from;
    std::chrono::year_month_day to; ///< its last day
};

/// The growing year that holds a date, by the tree's own leaf dates or those of the place.
[[nodiscard]] GrowingYear growingYear(const LeafDates& seen, const Place& place,
                                      std::chrono::year_month_day date);

} // namespace model::diary
