#pragma once

#include "app/document/edit.hpp"
#include "model/diary/tree_diary.hpp"

#include <atomic>
#include <chrono>
#include <functional>
#include <vector>

namespace app {

/// The diaries of all trees of a garden, so that tests can put scripted ones in their place. Costs
/// a search for cuts for each tree: ask for it on another thread.
using DiaryWork = std::function<std::vector<model::diary::TreeDiary>(
    const GardenSnapshot& garden, std::chrono::year_month_day date,
    const std::atomic<bool>& cancel)>;

/// The model's own. \param tables  outlives the result
[[nodiscard]] DiaryWork modelDiaryWork(const model::Tables& tables);

} // namespace app
