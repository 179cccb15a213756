#include "model/light/neighbours.hpp"

#include "model/light/lanes.hpp"

#include <algorithm>
#include <numeric>

namespace model::light {
namespace {

using Index = std::uint32_t;

/// The largest power of eight that leaves more than one part.
std::size_t eightsIn(std::size_t count)
{
    std::size_t part = kLanes;
    while (part * kLanes < count)
        part *= kLanes;
    return part;
}

void order(std::span<const Vec3> points, std::span<Index> indices, std::size_t part)
{
    if (indices.size() <= part) {
        if (part > kLanes)
            order(points, indices, part / kLanes);
        return;
    }
    const auto extent = [&](double Vec3::*axis) {
        const auto [low, high] =
            std::ranges::minmax(indices, {}, [&](Index i) { return points[i].*axis; });
        return points[high].*axis - points[low].*axis;
    };
    auto axis = &Vec3::x;
    for (const auto other : {&Vec3::y, &Vec3::z})
        if (extent(other) > extent(axis))
            axis = other;
    const std::size_t parts = (indices.size() + part - 1) / part;
    const std::size_t half = parts / 2 * part;
    std::ranges::nth_element(indices, indices.begin() + static_cast<std::ptrdiff_t>(half), {},
                             [&](Index i) { return points[i].*axis; });
    order(points, indices.first(half), part);
    order(points, indices.subspan(half), part);
}

} // namespace

std::vector<std::uint32_t> byNeighbourhood(std::span<const Vec3> points)
{
    std::vector<Index> indices(points.size());
    std::iota(indices.begin(), indices.end(), Index{0});
    if (points.size() > kLanes)
        order(points, indices, eightsIn(points.size()));
    return indices;
}

} // namespace model::light
