#pragma once

#include "model/garden/limb.hpp"
#include "model/geometry/curtain.hpp"

#include <vector>

namespace model {

/// A chain of curtains as few straight ones: the axis strays from them by at most a tenth of the
/// radius. Breaks where radius or hang change.
[[nodiscard]] std::vector<Curtain> straightened(const std::vector<Curtain>& chain);

/// The bare wood of a limb, from its union to where its leaves start, as thick as it is midway
/// between stations.
[[nodiscard]] std::vector<Curtain> bareWood(const Limb& limb);

} // namespace model
