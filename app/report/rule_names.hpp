#pragma once

#include "model/advice/suggestion.hpp"
#include "model/species/species.hpp"

namespace app {

/// Names of the model's answers in JSON (docs/assessment.schema.json). They never change. The words
/// of garden documents are in model/document/words.hpp.
[[nodiscard]] const char* jsonName(model::advice::Rule rule);
[[nodiscard]] const char* jsonName(model::advice::Severity severity);
[[nodiscard]] const char* jsonName(model::advice::Who who);
[[nodiscard]] const char* jsonName(model::advice::Tool tool);
[[nodiscard]] const char* jsonName(model::advice::Under kind);
[[nodiscard]] const char* jsonName(model::advice::Outcome outcome);
[[nodiscard]] const char* jsonName(model::advice::GoalResult::State state);
[[nodiscard]] const char* jsonName(model::Evidence evidence);

} // namespace app
