#pragma once

#include "model/garden/cut.hpp"
#include "model/garden/tree.hpp"

#include <optional>
#include <string>
#include <vector>

namespace model::advice {

/// Where wood that has to go starts along each limb, m from its union: dead, broken, or rubbing on
/// another limb; blank: none does. What grows from such wood goes from its union.
[[nodiscard]] std::vector<std::optional<double>> faultyFrom_m(const Tree& tree);

/// The cuts that clean a tree, which come before all others and are not counted as leaf
/// (docs/methods/advice.md, A18): dead wood back to where it lives, broken and rubbing limbs back
/// to the outermost side branch that can take over; the whole limb where nothing would be left. The
/// trunk is left alone, for a dead or broken top is an arborist's work.
/// \param keep  ids of limbs that are to stay as they are
[[nodiscard]] std::vector<Cut> cleaningCuts(const Tree& tree,
                                            const std::vector<std::string>& keep = {});

/// The mark on a limb for which it has to go, the innermost of several; nothing if it has none.
[[nodiscard]] std::optional<DefectKind> faultOf(const Limb& limb);

} // namespace model::advice
