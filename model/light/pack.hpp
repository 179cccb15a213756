#pragma once

#include "model/geometry/vec3.hpp"
#include "model/light/lanes.hpp"

#include <array>
#include <cstdint>
#include <span>
#include <vector>

namespace model::light {

/// Up to eight neighbouring points that take light, traced together.
struct Pack {
    Lanes x{}; ///< from `origin` of the call that made it, m; lanes beyond `count` repeat the last
    Lanes y{};
    Lanes z{};
    std::array<std::uint32_t, kLanes> point{}; ///< index into the points packed
    std::size_t count{};
};

/// Points in packs of neighbours, so that one look tells what can't shade any of them.
[[nodiscard]] std::vector<Pack> packed(std::span<const Vec3> points, Vec3 origin);

} // namespace model::light
