#pragma once

#include "app/paper/sheet_parts.hpp"

namespace app {

/// The cuts in working order: what, with what, in which lengths, and a box to tick.
[[nodiscard]] Table cutTable(const TreeOnPaper& on);

/// Headroom over each strip: needed, now and after, dry and at its heaviest.
[[nodiscard]] Table headroomTable(const TreeOnPaper& on);

/// Load on the limbs asked for most: share of the strength now and after, and the breaking gust.
[[nodiscard]] Table loadTable(const TreeOnPaper& on);

/// Light on each planting in the growing season: needed, now and after.
[[nodiscard]] Table lightTable(const PaperReport& report, const model::Tables& tables,
                               const Units& units);

/// The twelve months at the garden's place: good to cut this species, or to leave alone.
[[nodiscard]] Table monthTable(const TreeOnPaper& on);

/// What of the day's weather speaks against the work, from where, and room for what was read off.
[[nodiscard]] Table dayTable(const model::advice::DayWeather& weather, const Units& units);

} // namespace app
