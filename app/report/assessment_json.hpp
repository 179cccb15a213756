#pragma once

#include "app/report/suggestion_json.hpp"
#include "model/assessment/assessment.hpp"

namespace app {

/// The whole answer as JSON, "underbough-assessment" version 1: docs/command-line.md and
/// docs/assessment.schema.json.
/// \param garden  the garden that was assessed
[[nodiscard]] Json assessmentJson(const model::Assessment& assessment, const model::Garden& garden,
                                  const model::Tables& tables, const Units& units);

/// Direct sun on each planting; `after` may be empty.
[[nodiscard]] Json sunJson(const std::vector<model::light::PlantingSun>& sun,
                           const std::vector<model::light::PlantingSun>& after,
                           std::chrono::year_month_day date, const model::Garden& garden,
                           const model::Tables& tables);

} // namespace app
