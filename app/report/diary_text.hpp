#pragma once

#include "app/report/text_page.hpp"
#include "app/words/wording.hpp"
#include "model/diary/tree_diary.hpp"

namespace app {

/// Adds one tree's diary: what is due, its visits, leaf by season, growth and wounds.
void addDiary(TextPage& page, const model::diary::TreeDiary& diary, const Wording& wording);

/// Adds one thing that a tree is due for: when, what and why.
void addDue(TextPage& page, const model::diary::Due& due, const Wording& wording, bool nameTheTree);

} // namespace app
