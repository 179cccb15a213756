#pragma once

#include "model/advice/cut_work.hpp"
#include "model/load/limb_load.hpp"

namespace model::advice {

/// Who may make one cut, and why: height of the cut, size of the wound, weight of the piece,
/// overhead lines, what lies in the fall zone, decay and cracks.
[[nodiscard]] Labour whoCuts(const Garden& garden, const Tree& tree, const PlannedCut& planned,
                             const FallingPart& part);

/// What about the tree itself asks for a professional, whatever is cut: warning signs, lean, dead
/// limbs, legal protection.
[[nodiscard]] Labour whoForTree(const Tree& tree);

/// Limbs whose expected load reaches their strength at the gust asked for.
[[nodiscard]] Labour whoForLoads(const Tree& tree, const load::TreeLoad& loads);

/// The stricter of both, with every reason of either.
[[nodiscard]] Labour together(Labour a, const Labour& b);

} // namespace model::advice
