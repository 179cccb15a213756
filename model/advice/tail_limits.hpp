#pragma once

#include "model/advice/limb_states.hpp"
#include "model/advice/search.hpp"

#include <vector>

namespace model::advice {

/// So that a limb is not left as a lion's tail.
struct TailLimits {
    std::vector<Limit> limits;
    std::vector<std::size_t> limbs; ///< that each is about: indices into Tree::limbs
};

/// The rule against lion's tails (lionTails(), docs/methods/advice.md, A2) as limits that add up:
/// one for each limb that some set of cuts could leave as one.
/// \param states  what the options of the decisions make of the limbs
[[nodiscard]] TailLimits tailLimits(const Tree& tree, const Foliation& foliation,
                                    const LimbStates& states);

} // namespace model::advice
