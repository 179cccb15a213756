#pragma once

#include "model/garden/place.hpp"
#include "model/light/sun.hpp"

#include <chrono>

namespace app {

/// The instant at which the clock in a place shows `hour` (0 .. 24) on a date: by the place's time
/// zone, summer time included, or by the mean sun where it names none that this system knows.
[[nodiscard]] model::light::Instant instantAt(const model::Place& place,
                                              std::chrono::year_month_day date, double hour);

} // namespace app
