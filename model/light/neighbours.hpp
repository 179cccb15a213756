#pragma once

#include "model/geometry/vec3.hpp"

#include <cstdint>
#include <span>
#include <vector>

namespace model::light {

/// The points' indices in an order of which every eight, every eight times eight and so on are
/// neighbours: halved across the longest side, at whole eights, until eight are left.
[[nodiscard]] std::vector<std::uint32_t> byNeighbourhood(std::span<const Vec3> points);

} // namespace model::light
