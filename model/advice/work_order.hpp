#pragma once

#include "model/garden/cut.hpp"
#include "model/garden/tree.hpp"

#include <vector>

namespace model::advice {

/// The cuts of one job in the order to make them (docs/methods/advice.md, A12): what grows from a
/// limb before the limb itself (outer before inner), a limb shortened before what stays of it is
/// lifted or thinned; and of those that may come next, lifts first (they clear the room to stand
/// in), then the highest, so that nothing falls on a limb that still has to be worked on.
/// \pre  every cut names a limb of the tree
[[nodiscard]] std::vector<Cut> inWorkingOrder(const Tree& tree, std::vector<Cut> cuts);

} // namespace model::advice
