#pragma once

#include "app/report/json_text.hpp"
#include "app/words/wording.hpp"
#include "model/advice/suggestion.hpp"

namespace app {

/// A number as JSON: six figures, which is more than a sketch can bear; null when it is not finite.
[[nodiscard]] Json number(double value);
[[nodiscard]] Json number(const std::optional<double>& value);

[[nodiscard]] Json toJson(const model::headroom::StripHeadroom& headroom);

/// The finding with its sentence, so that a reader of the JSON needs no table of rules.
[[nodiscard]] Json toJson(const model::advice::Finding& finding, const Wording& wording);
[[nodiscard]] Json toJson(const model::advice::Labour& labour, const Wording& wording);
[[nodiscard]] Json toJson(const model::advice::Suggestion& suggestion, const Wording& wording);

/// The standing cautions as a list of sentences.
[[nodiscard]] Json cautionsJson();

} // namespace app
