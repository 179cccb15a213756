#pragma once

#include "model/garden/place.hpp"
#include "model/garden/tree.hpp"
#include "model/species/species.hpp"

#include <chrono>
#include <string>
#include <vector>

namespace model::growth {

enum class MeasuredAt {
    strip, ///< headroom over a strip of ground
    tip,   ///< the tip of a limb
};

/// What a tree grew between two visits that measured the same thing.
struct MeasuredGrowth {
    MeasuredAt at{};
    std::string subject; ///< id of the strip or of the limb
    std::chrono::year_month_day from;
    std::chrono::year_month_day to;
    double years{};   ///< of growth between them (G1), not of the calendar
    double moved_m{}; ///< headroom lost, or the way the tip has come; negative: headroom gained
    double share{};   ///< of what shoots grow that shows in it (G2)
};

/// Every pair of neighbouring visits that measured the same strip or tip and left it alone in
/// between, by the later date. Pairs with less than a twentieth of a year's growth, and pairs with
/// a cut that was not measured, are left out (G3).
[[nodiscard]] std::vector<MeasuredGrowth> measuredGrowth(const Tree& tree, ShootPattern pattern,
                                                         const Place& place);

/// The headroom that the newest visit left over a strip.
struct LeftOver {
    std::chrono::year_month_day date;
    double height_m{};
};

/// How a strip was left at last; blank: never measured, or cut since without being measured.
/// \param date  visits after it don't count
[[nodiscard]] std::optional<LeftOver> leftOver(const Tree& tree, const std::string& strip,
                                               std::chrono::year_month_day date);

/// The visits of a tree in the order in which they were made.
[[nodiscard]] std::vector<const Visit*> visitsByDate(const Tree& tree);

} // namespace model::growth
