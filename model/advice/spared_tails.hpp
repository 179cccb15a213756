#pragma once

#include "model/advice/rule.hpp"
#include "model/crown/foliage.hpp"
#include "model/garden/cut.hpp"
#include "model/garden/tree.hpp"

#include <vector>

namespace model::advice {

/// For each of these cuts, the limbs that would be left as lion's tails (lionTails()) if it alone
/// were not made: the end that goes so that leaf may go from the inner part.
[[nodiscard]] std::vector<std::vector<Finding>>
sparedTails(const Tree& tree, const Foliation& foliation, const std::vector<Cut>& cuts);

} // namespace model::advice
