#include "model/light/pack.hpp"

#include "model/light/neighbours.hpp"

#include <algorithm>

namespace model::light {

std::vector<Pack> packed(std::span<const Vec3> points, Vec3 origin)
{
    const auto order = byNeighbourhood(points);
    std::vector<Pack> packs;
    for (std::size_t first = 0; first < order.size(); first += kLanes) {
        Pack pack;
        pack.count = std::min(kLanes, order.size() - first);
        for (std::size_t lane = 0; lane < kLanes; ++lane) {
            pack.point[lane] = order[first + std::min(lane, pack.count - 1)];
            const Vec3 at = points[pack.point[lane]] - origin;
            pack.x[lane] = static_cast<float>(at.x);
            pack.y[lane] = static_cast<float>(at.y);
            pack.z[lane] = static_cast<float>(at.z);
        }
        packs.push_back(pack);
    }
    return packs;
}

} // namespace model::light
