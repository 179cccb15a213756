#pragma once

#include "model/advice/limb_states.hpp"
#include "model/advice/search.hpp"

#include <vector>

namespace model::advice {

/// The rule against lion's tails (lionTails(), docs/methods/advice.md, A2) as limits that add up:
/// one for each limb that some set of cuts could leave as one.
/// \param states  what the options of these decisions make of the limbs
[[nodiscard]] std::vector<Limit> tailLimits(const Tree& tree, const Foliation& foliation,
                                            const Decisions& decisions, const LimbStates& states);

} // namespace model::advice
