#pragma once

#include "app/format/units.hpp"
#include "model/assessment/assessment.hpp"

namespace app {

/// The whole answer as plain text for a gardener: for each tree what was found, what to cut and
/// who does it; the sun on each planting; the cautions.
[[nodiscard]] QString assessmentText(const model::Assessment& assessment,
                                     const model::Garden& garden, const model::Tables& tables,
                                     const Units& units);

/// The sun on each planting as sentences under a heading; `after` may be empty.
class TextPage;
void addSun(TextPage& page, const std::vector<model::light::PlantingSun>& sun,
            const std::vector<model::light::PlantingSun>& after, std::chrono::year_month_day date,
            const model::Garden& garden, const model::Tables& tables, const Units& units);

} // namespace app
