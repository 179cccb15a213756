#pragma once

#include "model/advice/rule.hpp"
#include "model/garden/place.hpp"
#include "model/garden/tree.hpp"
#include "model/species/species.hpp"

#include <chrono>
#include <optional>
#include <vector>

namespace model::advice {

/// How much of a tree's leaf may go on a date.
struct Allowance {
    double share{};               ///< of the leaf as drawn, 0..1
    std::vector<Finding> reasons; ///< what set it, and what earlier visits took
};

/// The quarter of a growing season, or the species' own lower figure, or a tenth for old and
/// stressed trees: what a season's visits may take together, 0..1. A bearing peach lives on being
/// renewed: half of last year's shoots, and with them of the leaf that they bear
/// (docs/methods/advice.md, A17).
[[nodiscard]] double seasonShare(const Tree& tree, const Species& species);

/// The same, less what visits of the twelve months before `date` took.
[[nodiscard]] Allowance allowance(const Tree& tree, const Species& species,
                                  std::chrono::year_month_day date);

/// The month in which the north has the season that `month` brings at this latitude, 1..12.
[[nodiscard]] int northernMonth(std::chrono::month month, double latitude_deg);

/// What the calendar says against cutting in this month: a bad month for the species, birds.
[[nodiscard]] std::vector<Finding> calendarNotes(const Species& species, double latitude_deg,
                                                 std::chrono::year_month_day date);

/// An oak where oak wilt occurs, in the months in which it spreads to fresh wounds: `limit` is the
/// last of them. Blank: nothing to say.
[[nodiscard]] std::optional<Finding> oakWiltNote(const Species& species, const Place& place,
                                                 std::chrono::year_month_day date);

} // namespace model::advice
