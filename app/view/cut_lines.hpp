#pragma once

#include "app/view/cut_model.hpp"
#include "app/words/wording.hpp"
#include "model/advice/suggestion.hpp"

#include <vector>

namespace app {

/// The cuts of a suggestion as a person with a saw reads them, in working order.
[[nodiscard]] std::vector<CutLine> cutLines(const model::advice::Suggestion& suggestion,
                                            const Wording& wording);

[[nodiscard]] Tone::Value toneOf(model::advice::Who who);

} // namespace app
