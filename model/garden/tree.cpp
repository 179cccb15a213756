#include "model/garden/tree.hpp"

#include <algorithm>
#include <stdexcept>

namespace model {

namespace {

/// How far along a limb its axis first reaches a height; its length if it never does.
double alongToHeight_m(const Limb& limb, double height_m)
{
    double passed = 0.0;
    for (std::size_t i = 1; i < limb.stations.size(); ++i) {
        const Vec3 from = limb.stations[i - 1].position_m;
        const Vec3 to = limb.stations[i].position_m;
        const double length = norm(to - from);
        if (to.z >= height_m && to.z > from.z)
            return passed + length * std::max(0.0, (height_m - from.z) / (to.z - from.z));
        passed += length;
    }
    return passed;
}

} // namespace

int daysBetween(std::chrono::month_day from, std::chrono::month_day to)
{
    using namespace std::chrono;
    const auto inCommonYear = [](month_day day) {
        return sys_days{2001y / day.month() / day.day()};
    };
    const auto days = (inCommonYear(to) - inCommonYear(from)).count();
    return static_cast<int>(days < 0 ? days + 365 : days);
}

std::size_t limbIndex(const Tree& tree, const std::string& id)
{
    const auto found = std::ranges::find(tree.limbs, id, &Limb::id);
    return found == tree.limbs.end() ? kNoLimb
                                     : static_cast<std::size_t>(found - tree.limbs.begin());
}

LimbOrder limbOrder(const Tree& tree)
{
    const std::size_t count = tree.limbs.size();
    LimbOrder order{kNoLimb, std::vector(count, kNoLimb), {}, {}};
    order.children.resize(count);
    for (std::size_t i = 0; i < count; ++i) {
        const auto& limb = tree.limbs[i];
        if (!limb.parent) {
            if (order.trunk != kNoLimb)
                throw std::domain_error("limbOrder: two limbs without a parent");
            order.trunk = i;
            continue;
        }
        order.parent[i] = limbIndex(tree, *limb.parent);
        if (order.parent[i] == kNoLimb)
            throw std::domain_error("limbOrder: a limb's parent is missing");
        order.children[order.parent[i]].push_back(i);
    }
    if (order.trunk == kNoLimb)
        throw std::domain_error("limbOrder: no trunk");
    for (auto& siblings : order.children)
        std::ranges::stable_sort(siblings, {},
                                 [&](std::size_t i) { return tree.limbs[i].attachedAt_m; });
    order.rootFirst = limbAndBeyond(order, order.trunk);
    if (order.rootFirst.size() != count)
        throw std::domain_error("limbOrder: limbs grow from each other in a circle");
    return order;
}

std::vector<std::size_t> limbAndBeyond(const LimbOrder& order, std::size_t limb)
{
    std::vector<std::size_t> found{limb};
    for (std::size_t next = 0; next < found.size(); ++next) {
        const auto& grown = order.children[found[next]];
        found.insert(found.end(), grown.begin(), grown.end());
    }
    return found;
}

double top_m(const Limb& limb)
{
    double top = 0.0;
    for (const auto& station : limb.stations)
        top = std::max(top, station.position_m.z);
    if (limb.foliage)
        for (const auto& station : stretch(limb, limb.foliage->from_m, length_m(limb)))
            top = std::max(top, station.position_m.z + limb.foliage->radius_m);
    return top;
}

double height_m(const Tree& tree)
{
    double top = 0.0;
    for (const auto& limb : tree.limbs)
        top = std::max(top, top_m(limb));
    return top;
}

double stemDiameter_m(const Tree& tree)
{
    const auto order = limbOrder(tree);
    const auto& trunk = tree.limbs[order.trunk];
    const auto& branches = order.children[order.trunk];
    const double belowFork_m =
        branches.empty() ? length_m(trunk) : tree.limbs[branches.front()].attachedAt_m;
    return axisPoint(trunk, std::min(alongToHeight_m(trunk, kBreastHeight_m), belowFork_m))
        .diameter_m;
}

} // namespace model
