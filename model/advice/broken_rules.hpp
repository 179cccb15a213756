#pragma once

#include "model/advice/rule.hpp"
#include "model/crown/foliage.hpp"
#include "model/garden/tree.hpp"
#include "model/species/species.hpp"

#include <span>
#include <vector>

namespace model::advice {

/// The rules of the guideline that a set of cuts breaks, each with the limb where it is broken, if
/// it is about one. A crown that breaks a rule as it stands may go on doing so, not further. Dead
/// wood may always go.
/// \param allowance  share of the tree's leaf that may go
/// \param cuts       each can be made once those before it are (madeInTurn())
[[nodiscard]] std::vector<Finding> brokenRules(const Tree& tree, const Foliation& foliation,
                                               const Species& species, double allowance,
                                               std::span<const Cut> cuts);

} // namespace model::advice
