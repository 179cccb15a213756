#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/limb.hpp"

namespace model::advice {

/// A stretch of one limb by itself, as a limb: its own wood and leaf, nothing that grows from it.
[[nodiscard]] Limb limbPart(const Limb& limb, double from_m, double to_m);

/// Leaf on a limb by itself.
[[nodiscard]] double ownLeaf_m2(const Limb& limb, const Foliation& foliation);

} // namespace model::advice
