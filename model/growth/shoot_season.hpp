#pragma once

#include "model/garden/place.hpp"
#include "model/garden/tree.hpp"
#include "model/species/species.hpp"

#include <chrono>

namespace model::growth {

/// Share of a year's shoot extension that is done `days` after the buds burst, 0..1 (G1).
/// \param leafSeason_days  from bud burst until half of the leaves are down, > 0
[[nodiscard]] double extensionDone(ShootPattern pattern, double days, double leafSeason_days);

/// Years' worth of shoot extension made at a place up to a date, on a scale whose zero means
/// nothing: the difference between two dates is how much grew between them, 1.0 for a whole year
/// (G1). Never falls with time.
/// \param seen  when the gardener has seen the tree come into leaf and lose it; blank: by the rule
[[nodiscard]] double growthClock(ShootPattern pattern, const Place& place,
                                 std::chrono::sys_days date, const LeafDates& seen = {});

/// The first day on which `years` of extension have been made since `from`; twenty years on if it
/// takes longer. \pre years >= 0
[[nodiscard]] std::chrono::sys_days grownBy(ShootPattern pattern, const Place& place,
                                            std::chrono::sys_days from, double years,
                                            const LeafDates& seen = {});

} // namespace model::growth
