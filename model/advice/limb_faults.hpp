#pragma once

#include "model/advice/rule.hpp"
#include "model/crown/foliage.hpp"
#include "model/garden/tree.hpp"

#include <vector>

namespace model::advice {

/// Two limbs that touch or nearly so, away from where they fork.
struct Rubbing {
    std::size_t thinner{}; ///< index into Tree::limbs: the one that is usually taken
    std::size_t other{};
    double gap_m{}; ///< between their wood where it is least; below 0: drawn into each other
};

/// Pairs of living limbs whose wood comes within kRubbing_m (docs/methods/advice.md, A2).
[[nodiscard]] std::vector<Rubbing> rubbingLimbs(const Tree& tree);

/// Share of the leaf on a limb, and on what grows from it, that sits on its inner two thirds: its
/// own by where it grows, that of side branches by where they join. 1 where there is no leaf.
[[nodiscard]] double innerLeafShare(const Tree& tree, const Foliation& foliation, std::size_t limb);

/// What is wrong with the limbs of a tree, or would be after cuts: limbs that rub, and limbs that
/// side branches were taken from until less than half of the leaf is on the inner two thirds and
/// less than before.
[[nodiscard]] std::vector<Finding> limbFaults(const Tree& before, const Tree& after,
                                              const Foliation& foliation);

} // namespace model::advice
