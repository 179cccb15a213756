#pragma once

#include "app/words/wording.hpp"
#include "model/advice/suggestion.hpp"

namespace app {

/// What became of one goal, with its figures before and after.
[[nodiscard]] QString sentence(const model::advice::GoalResult& result, const Wording& wording);

} // namespace app
