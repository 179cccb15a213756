#include "model/sketch/copy_limb.hpp"

#include "model/sketch/find_limb.hpp"

#include "model/geometry/angle.hpp"
#include "model/sketch/grow.hpp"

#include <cmath>
#include <map>
#include <stdexcept>

namespace model::sketch {
namespace {

constexpr double kLeastPart_m = 0.05;
constexpr double kLeastLeafy_m = 0.02; // validate() wants leaf to have some length

template <typename Place>
Tree withCopy(const Tree& tree, const std::string& id, Place place)
{
    const auto index = findLimb(tree, id);
    const auto order = limbOrder(tree);
    if (index == order.trunk)
        throw std::domain_error("copyLimb: a tree has one trunk");
    Tree changed = tree;
    std::map<std::string, std::string> newIds;
    for (const auto grown : limbAndBeyond(order, index)) {
        Limb copy = tree.limbs[grown];
        copy.id = freeLimbId(changed);
        copy.name.clear();
        copy.defects.clear(); // what was seen on one limb was not seen on the other
        newIds[tree.limbs[grown].id] = copy.id;
        if (grown != index)
            copy.parent = newIds.at(*copy.parent);
        for (auto& station : copy.stations)
            station.position_m = place(station.position_m);
        changed.limbs.push_back(std::move(copy));
    }
    return changed;
}

/// Leaf that starts so far along, if a leafy length is left of it.
std::optional<Foliage> leafFrom(const std::optional<Foliage>& leaf, double from_m, double length_m)
{
    if (!leaf || from_m > length_m - kLeastLeafy_m)
        return std::nullopt;
    auto moved = leaf;
    moved->from_m = std::max(0.0, from_m);
    return moved;
}

} // namespace

Tree copyLimb(const Tree& tree, const std::string& limb, double turn_deg)
{
    const Vec3 union_m = tree.limbs[findLimb(tree, limb)].stations.front().position_m;
    const double c = std::cos(radians(turn_deg));
    const double s = std::sin(radians(turn_deg));
    return withCopy(tree, limb, [=](Vec3 p) {
        const Vec3 off = p - union_m;
        return union_m + Vec3{c * off.x + s * off.y, c * off.y - s * off.x, off.z};
    });
}

Tree mirrorLimb(const Tree& tree, const std::string& limb, Vec3 level)
{
    const Vec3 union_m = tree.limbs[findLimb(tree, limb)].stations.front().position_m;
    return withCopy(tree, limb, [=](Vec3 p) { return p - 2.0 * dot(p - union_m, level) * level; });
}

Tree splitLimb(const Tree& tree, const std::string& id, double at_m)
{
    const auto index = findLimb(tree, id);
    const Limb& whole = tree.limbs[index];
    const double length = length_m(whole);
    if (!(at_m >= kLeastPart_m) || !(at_m <= length - kLeastPart_m))
        throw std::domain_error("splitLimb: too near an end");
    Tree changed = tree;
    Limb inner = whole;
    Limb outer = whole;
    inner.stations = stretch(whole, 0.0, at_m);
    outer.stations = stretch(whole, at_m, length);
    outer.id = freeLimbId(tree);
    outer.name.clear();
    outer.parent = whole.id;
    outer.attachedAt_m = at_m;
    outer.unionKind = Union::sound;
    if (whole.foliage) {
        inner.foliage = leafFrom(whole.foliage, whole.foliage->from_m, at_m);
        outer.foliage = leafFrom(whole.foliage, whole.foliage->from_m - at_m, length - at_m);
    }
    const double fruitBeyond = inner.foliage && outer.foliage ? (length - at_m) / length
                               : outer.foliage                ? 1.0
                                                              : 0.0;
    outer.fruit_kg = fruitBeyond * whole.fruit_kg;
    inner.fruit_kg = whole.fruit_kg - outer.fruit_kg;
    const auto divide = [at_m](auto& within, auto& beyond) {
        std::erase_if(within, [at_m](const auto& mark) { return mark.at_m > at_m; });
        std::erase_if(beyond, [at_m](const auto& mark) { return mark.at_m <= at_m; });
        for (auto& mark : beyond)
            mark.at_m -= at_m;
    };
    divide(inner.defects, outer.defects);
    divide(inner.props, outer.props);
    for (auto& limb : changed.limbs)
        if (limb.parent == whole.id && limb.attachedAt_m > at_m) {
            limb.parent = outer.id;
            limb.attachedAt_m -= at_m;
        }
    changed.limbs[index] = std::move(inner);
    changed.limbs.push_back(std::move(outer));
    return changed;
}

} // namespace model::sketch
