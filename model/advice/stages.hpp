#pragma once

#include "model/advice/suggestion.hpp"

#include <chrono>
#include <vector>

namespace model::advice {

/// One visit of a job that takes several.
struct Stage {
    std::chrono::year_month_day date{};
    Suggestion suggestion; ///< for the tree as it has grown by then; reaches its share of the way
};

/// A job spread over visits, because one can't reach the goals inside the guideline.
struct Stages {
    std::vector<Stage> visits; ///< the first on the day asked about; empty: one visit does
    bool reached{};            ///< after the last, every goal is
    /// With `reached`: fewer visits can't do it, for they may not take as much leaf as the least
    /// that the goals ask for, what grows in between not counted.
    bool fewest{};
};

/// On each day the least cuts that would reach every goal, were it not for the rules that count by
/// the season, are looked for, and made as far as those rules let this visit go, the largest first;
/// the next comes in the first good month for the species that is a year or more later, when the
/// shoots have grown as the middle tree's do and what the visits before took no longer counts
/// (A14). Empty if no cuts reach the goals without breaking a rule that no waiting heals.
///
/// \param first   what suggest() said of the same tree, day and aim
/// \param cancel  looked at between search nodes
[[nodiscard]] Stages stages(const Garden& garden, const Tree& tree, const Foliation& foliation,
                            const Species& species, const Suggestion& first,
                            std::chrono::year_month_day date, const Aim& aim = {},
                            const std::atomic<bool>* cancel = nullptr);

/// The first day, at the earliest a year after `from`, of a month that is good for cutting the
/// species at this latitude; with no month known to be good, of one that is not to be avoided.
[[nodiscard]] std::chrono::year_month_day nextVisit(const Species& species, double latitude_deg,
                                                    std::chrono::year_month_day from);

} // namespace model::advice
