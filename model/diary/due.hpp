#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"
#include "model/growth/shoot_rate.hpp"
#include "model/species/species.hpp"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace model::diary {

/// Why a tree is due.
enum class DueKind {
    headroom, ///< the headroom over a strip is, or will be, lost
    window,   ///< cuts are planned, and the species has good months for them
    storm,    ///< to be looked at before the storms come
    written,  ///< the gardener wrote it
};

enum class DueState {
    overdue, ///< its day is past
    now,     ///< within its days
    later,
};

/// One reason to visit a tree, and when. Days are inclusive.
struct Due {
    std::string tree; ///< id
    DueKind kind{};
    std::string subject; ///< headroom: id of the strip; written: id of the visit; else empty
    DueState state{};
    std::chrono::year_month_day from;
    /// Blank: no last day within twenty years.
    std::optional<std::chrono::year_month_day> to;

    /// Headroom: the day by which half of such trees have lost it; `from` and `to` are those of one
    /// in ten and nine in ten. Blank: lost already, or not within twenty years.
    std::optional<std::chrono::year_month_day> middle;
    std::optional<double> height_m; ///< headroom as it was left, or as drawn
    std::optional<double> needed_m;
    bool measured{}; ///< headroom: from a visit's tape, not from the sketch

    std::size_t cuts{}; ///< window: planned
    friend bool operator==(const Due&, const Due&) = default;
};

/// What the plan for a tree still has to do.
struct StillToDo {
    std::size_t cuts{}; ///< planned, inside the guideline
    bool more{};        ///< the guideline left something undone
    [[nodiscard]] bool any() const { return cuts > 0 || more; }
};

/// Everything that one tree is due for, the most urgent first (D5-D7).
/// \param rate  growth::shootRate() of the tree
[[nodiscard]] std::vector<Due> dueOf(const Garden& garden, const Tree& tree,
                                     const Foliation& foliation, const Species& species,
                                     const growth::ShootRate& rate, const StillToDo& plan,
                                     std::chrono::year_month_day date);

/// Overdue first, then what can be done now, then the rest; by their first day in each.
void sortByUrgency(std::vector<Due>& all);

/// The leaf that visits of the twelve months up to `date` took, as far as it was noted.
[[nodiscard]] double takenLately(const Tree& tree, std::chrono::year_month_day date);

} // namespace model::diary
