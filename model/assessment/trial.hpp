#pragma once

#include "model/assessment/assessment.hpp"

#include <optional>
#include <string>
#include <vector>

namespace model {

/// What cuts that the gardener tries out come to.
struct Trial {
    advice::Suggestion judged; ///< as advice::judge() has it: weights, who, rules broken
    Tree standing;             ///< the tree as they leave it
    load::TreeLoad load;       ///< as it stands, at the gust asked about
    load::TreeLoad loadAfter;
    std::vector<light::PlantingSun> sun; ///< as things stand, on the date
    std::vector<light::PlantingSun> sunAfter;
};

/// Makes the cuts on one tree of a garden and reckons it before and after. Some tens of
/// milliseconds.
/// \pre  validate(garden, tables) found no fault
/// \throws std::domain_error  if there is no such tree
[[nodiscard]] Trial tryCuts(const Garden& garden, const Tables& tables, const Question& question,
                            const std::string& tree, const std::vector<Cut>& cuts);

/// The cut that a saw at a place along a limb most likely means (A10): at its foot the whole limb
/// goes; beside a side branch it is shortened to that branch; elsewhere it is shortened to nothing,
/// which the guideline will not have. On the stem only the last two.
/// \pre  `limb` is an index of the tree's
[[nodiscard]] Cut cutAt(const Tree& tree, std::size_t limb, double at_m);

} // namespace model
