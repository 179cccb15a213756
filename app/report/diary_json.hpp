#pragma once

#include "app/report/json_text.hpp"
#include "app/words/wording.hpp"
#include "model/diary/tree_diary.hpp"

namespace app {

/// Names in JSON (docs/assessment.schema.json). They never change.
[[nodiscard]] const char* jsonName(model::diary::DueKind kind);
[[nodiscard]] const char* jsonName(model::diary::DueState state);

[[nodiscard]] Json toJson(const model::diary::Due& due, const Wording& wording);
/// One tree's diary with its visits.
[[nodiscard]] Json toJson(const model::diary::TreeDiary& diary, const Wording& wording);

} // namespace app
