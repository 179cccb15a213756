#pragma once

#include "model/garden/garden.hpp"

namespace app {

/// The bearing from which a tree's side view tells most at first sight: along the strip that it
/// overhangs nearest to the stem, so that the strip is seen in section; else along the nearest
/// planting; else to the north. Degrees, 0 .. 360.
[[nodiscard]] double tellingBearing_deg(const model::Garden& garden, const model::Tree& tree);

} // namespace app
