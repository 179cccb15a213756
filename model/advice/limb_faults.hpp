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

/// A limb's own leaf, hanging shoots left out.
struct OwnLeaf {
    double all_m2{};
    double inner_m2{}; ///< up to a given length along it
};
/// \param inner_m    that length, from the union
/// \param foliation  of the tree as it was sketched
[[nodiscard]] OwnLeaf ownInnerLeaf(const Limb& limb, double inner_m, const Foliation& foliation);

/// How much of a limb, from its union, is its inner part: two thirds (ANSI A300-1995 5.3.1).
[[nodiscard]] double innerLength_m(const Limb& limb);

/// Share of the leaf on a limb, and on what grows from it, that sits on its inner two thirds: its
/// own by where it grows, that of side branches by where they join; hanging shoots left out. 1
/// where there is no leaf.
[[nodiscard]] std::vector<double> innerLeafShares(const Tree& tree, const Foliation& foliation);

/// Limbs that cuts would leave as a lion's tail: side branches or shoots taken from them until less
/// than half of the leaf is on the inner two thirds, and less than before. The inner two thirds are
/// those of the limb before, so that its end may be cut back, but bare wood cut off its tip excuses
/// nothing.
/// \param before  the tree, and its innerLeafShares()
[[nodiscard]] std::vector<Finding> lionTails(const Tree& before, const std::vector<double>& shares,
                                             const Tree& after, const Foliation& foliation);

/// Limbs of a tree that rub, as something to be told.
[[nodiscard]] std::vector<Finding> rubbingNotes(const Tree& tree);

} // namespace model::advice
