#pragma once

#include "app/words/wording.hpp"
#include "model/light/daylight.hpp"

namespace app {

/// A planting's direct sun on the day, what it needs if it grows then, and what each tree costs it.
/// \param after  the same once the suggested cuts are made; null: not worked out
[[nodiscard]] QString sentence(const model::light::PlantingSun& sun,
                               const model::light::PlantingSun* after,
                               std::chrono::year_month_day date, const model::Garden& garden,
                               const model::Tables& tables, const Units& units);

} // namespace app
