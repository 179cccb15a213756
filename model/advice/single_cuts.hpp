#pragma once

#include "model/garden/cut.hpp"
#include "model/garden/tree.hpp"

#include <vector>

namespace model::advice {

/// Every cut that can be made on a tree by itself, limb by limb: take the limb off; shorten it to
/// each lateral fit to take over; thin its own small shoots by a quarter, or
/// renew those of a fruit tree by the most that is usual; lift its hanging shoots
/// to half their length. The trunk is neither taken off nor shortened. What the guideline says of
/// each is left to the caller.
[[nodiscard]] std::vector<Cut> singleCuts(const Tree& tree);

} // namespace model::advice
