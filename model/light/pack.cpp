#include "model/light/pack.hpp"

#include <algorithm>
#include <numeric>

namespace model::light {
namespace {

using Index = std::uint32_t;

/// Orders [from, to) so that cutting it every eight gives compact groups: halves it across its
/// longer side until one pack is left.
void orderByNeighbourhood(std::span<const Vec3> points, std::span<Index> order)
{
    if (order.size() <= kLanes)
        return;
    const auto extent = [&](double Vec3::*axis) {
        const auto [low, high] =
            std::ranges::minmax(order, {}, [&](Index i) { return points[i].*axis; });
        return points[high].*axis - points[low].*axis;
    };
    auto axis = &Vec3::x;
    for (const auto other : {&Vec3::y, &Vec3::z})
        if (extent(other) > extent(axis))
            axis = other;
    const std::size_t packs = (order.size() + kLanes - 1) / kLanes;
    const auto half = static_cast<std::ptrdiff_t>(packs / 2 * kLanes);
    std::ranges::nth_element(order, order.begin() + half, {},
                             [&](Index i) { return points[i].*axis; });
    orderByNeighbourhood(points, order.first(static_cast<std::size_t>(half)));
    orderByNeighbourhood(points, order.subspan(static_cast<std::size_t>(half)));
}

} // namespace

std::vector<Pack> packed(std::span<const Vec3> points, Vec3 origin)
{
    std::vector<Index> order(points.size());
    std::iota(order.begin(), order.end(), Index{0});
    orderByNeighbourhood(points, order);
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
