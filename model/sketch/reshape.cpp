#include "model/sketch/reshape.hpp"

#include "model/sketch/find_limb.hpp"

#include <algorithm>
#include <stdexcept>

namespace model::sketch {
namespace {

/// A place along a limb that stays where it is when the limb is bent: between which stations, and
/// how far from the one to the next.
double carriedAlong(const Limb& before, const Limb& after, double at_m)
{
    double passedBefore = 0.0;
    double passedAfter = 0.0;
    for (std::size_t i = 1; i < before.stations.size(); ++i) {
        const auto run = [i](const Limb& limb) {
            return norm(limb.stations[i].position_m - limb.stations[i - 1].position_m);
        };
        const double lengthBefore = run(before);
        const double lengthAfter = run(after);
        if (at_m <= passedBefore + lengthBefore && lengthBefore > 0.0)
            return passedAfter + lengthAfter * (at_m - passedBefore) / lengthBefore;
        passedBefore += lengthBefore;
        passedAfter += lengthAfter;
    }
    return passedAfter;
}

void shift(Limb& limb, Vec3 by)
{
    for (auto& station : limb.stations)
        station.position_m += by;
}

void shiftWithAllBeyond(Tree& tree, const LimbOrder& order, std::size_t limb, Vec3 by)
{
    for (const auto grown : limbAndBeyond(order, limb))
        shift(tree.limbs[grown], by);
}

Limb bent(const Limb& limb, std::size_t station, Vec3 to_m)
{
    Limb after = limb;
    const Vec3 by = to_m - limb.stations[station].position_m;
    std::vector<double> along{0.0};
    for (std::size_t i = 1; i < limb.stations.size(); ++i)
        along.push_back(along.back() +
                        norm(limb.stations[i].position_m - limb.stations[i - 1].position_m));
    for (std::size_t i = 1; i < limb.stations.size(); ++i) {
        const double share = i >= station ? 1.0 : along[i] / along[station];
        after.stations[i].position_m += share * by;
    }
    if (after.foliage)
        after.foliage->from_m = carriedAlong(limb, after, limb.foliage->from_m);
    for (auto& defect : after.defects)
        defect.at_m = carriedAlong(limb, after, defect.at_m);
    for (auto& prop : after.props)
        prop.at_m = carriedAlong(limb, after, prop.at_m);
    return after;
}

} // namespace

Tree bendLimb(const Tree& tree, const std::string& limb, std::size_t station, Vec3 to_m)
{
    const auto index = findLimb(tree, limb);
    if (station == 0 || station >= tree.limbs[index].stations.size())
        throw std::domain_error("bendLimb: no such station");
    const auto order = limbOrder(tree);
    const Limb& before = tree.limbs[index];
    const Limb after = bent(before, station, to_m);

    Tree changed = tree;
    for (const auto child : order.children[index]) {
        auto& grown = changed.limbs[child];
        const double joinedAt_m = carriedAlong(before, after, grown.attachedAt_m);
        const Vec3 by = axisPoint(after, joinedAt_m).position_m -
                        axisPoint(before, grown.attachedAt_m).position_m;
        shiftWithAllBeyond(changed, order, child, by);
        grown.attachedAt_m = joinedAt_m;
    }
    changed.limbs[index] = after;
    return changed;
}

Tree slideUnion(const Tree& tree, const std::string& limb, Vec3 near_m)
{
    const auto index = findLimb(tree, limb);
    const auto order = limbOrder(tree);
    if (index == order.trunk)
        throw std::domain_error("slideUnion: the trunk grows from no limb");
    const Limb& parent = tree.limbs[order.parent[index]];
    const double at_m = nearestAlong_m(parent, near_m);

    Tree changed = tree;
    const Vec3 by =
        axisPoint(parent, at_m).position_m - tree.limbs[index].stations.front().position_m;
    shiftWithAllBeyond(changed, order, index, by);
    changed.limbs[index].attachedAt_m = at_m;
    return changed;
}

Tree setDiameter(const Tree& tree, const std::string& limb, std::size_t station, double diameter_m)
{
    const auto index = findLimb(tree, limb);
    if (station >= tree.limbs[index].stations.size())
        throw std::domain_error("setDiameter: no such station");
    Tree changed = tree;
    changed.limbs[index].stations[station].diameter_m = diameter_m;
    return changed;
}

Tree renameLimb(const Tree& tree, const std::string& limb, const std::string& name)
{
    Tree changed = tree;
    changed.limbs[findLimb(tree, limb)].name = name;
    return changed;
}

Tree removeLimb(const Tree& tree, const std::string& limb)
{
    const auto index = findLimb(tree, limb);
    const auto order = limbOrder(tree);
    if (index == order.trunk)
        throw std::domain_error("removeLimb: the trunk carries every other limb");
    const auto gone = limbAndBeyond(order, index);
    Tree changed = tree;
    changed.limbs.clear();
    for (std::size_t i = 0; i < tree.limbs.size(); ++i)
        if (std::ranges::find(gone, i) == gone.end())
            changed.limbs.push_back(tree.limbs[i]);
    return changed;
}

} // namespace model::sketch
