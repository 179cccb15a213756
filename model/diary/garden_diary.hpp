#pragma once

#include "model/diary/tree_diary.hpp"

#include <atomic>

namespace model::diary {

/// The diaries of all trees, in their order, with what the least cuts for the day still have to do.
/// Costs a search for cuts for each tree. \param onlyTree  id of the one tree wanted; empty: all
/// \param cancel    set it from another thread to stop early: trees not reached are left out
/// \pre  validate(garden, tables) found no fault
[[nodiscard]] std::vector<TreeDiary> gardenDiary(const Garden& garden, const Tables& tables,
                                                 std::chrono::year_month_day date,
                                                 const std::string& onlyTree = {},
                                                 const std::atomic<bool>* cancel = nullptr);

/// What all trees are due for, the most urgent first.
[[nodiscard]] std::vector<Due> dueList(const std::vector<TreeDiary>& diaries);

} // namespace model::diary
