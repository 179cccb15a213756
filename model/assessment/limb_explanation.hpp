#pragma once

#include "model/assessment/assessment.hpp"
#include "model/load/explain.hpp"

#include <string>
#include <vector>

namespace model {

/// Why the figures of one limb are what they are.
struct LimbExplanation {
    std::string tree;   ///< id
    std::size_t limb{}; ///< index into Tree::limbs
    Question question;
    load::Conditions conditions; ///< with the gust used
    load::LimbLoad load;
    std::vector<load::Step> steps; ///< from what was drawn to the utilisation
    load::BreakingGust breaking;
};

/// The chain of one limb, on the day and in the gust asked about.
/// \pre  validate(garden, tables) found no fault
/// \throws std::out_of_range  if there is no such tree or limb
[[nodiscard]] LimbExplanation explainLimb(const Garden& garden, const Tables& tables,
                                          const Question& question, const std::string& tree,
                                          std::size_t limb);

} // namespace model
