#pragma once

#include "model/advice/suggestion.hpp"

namespace model::advice {

/// What it costs to cut so much higher than needed, and how long that holds.
struct Hold {
    double spare_m{};
    Outcome outcome{};
    double leafShare{};
    std::size_t cuts{};
    std::optional<growth::Regrowth> first; ///< the strip that is lost first; blank: none is
};

/// The same suggestion with 0, 0.15, 0.3 ... 0.9 m to spare, as far as the guideline allows: the
/// first that it doesn't allow is the last in the list. A spare that the cuts before it leave
/// anyway is passed over. What else is aimed at stays as it is.
/// Empty for a tree over no strip.
/// \param known  what suggest() said of the same tree, day and aim
[[nodiscard]] std::vector<Hold> holds(const Garden& garden, const Tree& tree,
                                      const Foliation& foliation, const Species& species,
                                      std::chrono::year_month_day date, Aim aim,
                                      const Suggestion& known,
                                      const std::atomic<bool>* cancel = nullptr);

} // namespace model::advice
