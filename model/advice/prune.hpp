#pragma once

#include "model/garden/cut.hpp"
#include "model/garden/tree.hpp"

#include <span>
#include <vector>

namespace model::advice {

/// The tree after a cut: limbs removed or shortened, laterals beyond the cut gone, hanging shoots
/// lifted, foliage thinned. Nothing else changes, and the drawn tree is not touched.
/// \throws std::domain_error  if the cut names no limb of the tree or lies beyond its tip
[[nodiscard]] Tree afterCut(const Tree& tree, const Cut& cut);
[[nodiscard]] Tree afterCuts(Tree tree, std::span<const Cut> cuts);

/// Those of the cuts that can be made in this order: without cuts on wood that isn't there, or that
/// a cut before has taken, and without a second cut of a kind on one limb.
[[nodiscard]] std::vector<Cut> madeInTurn(const Tree& tree, std::span<const Cut> cuts);

} // namespace model::advice
