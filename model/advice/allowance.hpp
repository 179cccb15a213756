#pragma once

#include "model/advice/rule.hpp"
#include "model/garden/tree.hpp"
#include "model/species/species.hpp"

#include <chrono>
#include <vector>

namespace model::advice {

/// How much of a tree's leaf may go on a date.
struct Allowance {
    double share{};               ///< of the leaf as drawn, 0..1
    std::vector<Finding> reasons; ///< what set it, and what earlier visits took
};

/// The quarter of a growing season, or the species' own lower figure, or a tenth for old and
/// stressed trees, less what visits of the twelve months before `date` took.
[[nodiscard]] Allowance allowance(const Tree& tree, const Species& species,
                                  std::chrono::year_month_day date);

/// What the calendar says against cutting in this month: a bad month for the species, birds.
[[nodiscard]] std::vector<Finding> calendarNotes(const Species& species, double latitude_deg,
                                                 std::chrono::year_month_day date);

} // namespace model::advice
