#pragma once

#include "app/report/json_text.hpp"
#include "app/words/wording.hpp"
#include "model/assessment/limb_explanation.hpp"

namespace app {

/// The chain of one limb as JSON, "underbough-explanation" version 1: docs/command-line.md and
/// docs/assessment.schema.json.
[[nodiscard]] Json explanationJson(const model::LimbExplanation& explanation,
                                   const Wording& wording, const model::Sources& sources);

/// The range of a limb's breaking gust; null for wood without strength.
[[nodiscard]] Json breakingJson(const model::load::BreakingGust& gust);

} // namespace app
