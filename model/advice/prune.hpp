#pragma once

#include "model/garden/cut.hpp"
#include "model/garden/tree.hpp"

#include <span>

namespace model::advice {

/// The tree after a cut: limbs removed or shortened, laterals beyond the cut gone, hanging shoots
/// lifted, foliage thinned. Nothing else changes, and the drawn tree is not touched.
/// \throws std::domain_error  if the cut names no limb of the tree or lies beyond its tip
[[nodiscard]] Tree afterCut(const Tree& tree, const Cut& cut);
[[nodiscard]] Tree afterCuts(Tree tree, std::span<const Cut> cuts);

} // namespace model::advice
