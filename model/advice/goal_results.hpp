#pragma once

#include "model/advice/suggestion.hpp"

namespace model::advice {

/// True if a goal names something that is there and can be reckoned.
[[nodiscard]] bool canBeAsked(const Goal& goal, const Patient& patient);

/// What became of each goal, measured on the tree as the cuts leave it.
/// \param leafShare  that the cuts take
[[nodiscard]] std::vector<GoalResult> goalResults(const Patient& patient,
                                                  const std::vector<Goal>& goals,
                                                  const Tree& standing, double leafShare);

} // namespace model::advice
