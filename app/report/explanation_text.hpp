#pragma once

#include "app/words/wording.hpp"
#include "model/assessment/limb_explanation.hpp"

namespace app {

/// The chain of one limb as plain text: from the wind and the weight to the share of its strength,
/// each figure with the number of its formula (docs/methods/load.md) and its source, then the range
/// of its breaking gust, what makes it wide, and the cautions.
[[nodiscard]] QString explanationText(const model::LimbExplanation& explanation,
                                      const Wording& wording, const model::Sources& sources);

} // namespace app
