#include "model/light/tally.hpp"

#include <algorithm>

namespace model::light {
namespace {

/// Sum over the lanes that count.
double sumOf(const Pack& pack, const Lanes& lanes)
{
    float sum = 0.0F;
    for (std::size_t i = 0; i < pack.count; ++i)
        sum += lanes[i];
    return sum;
}

double sumOfProduct(const Pack& pack, const Lanes& a, const Lanes& b)
{
    float sum = 0.0F;
    for (std::size_t i = 0; i < pack.count; ++i)
        sum += a[i] * b[i];
    return sum;
}

double sumOfLoss(const Pack& pack, const Lanes& light, const Lanes& through)
{
    float sum = 0.0F;
    for (std::size_t i = 0; i < pack.count; ++i)
        sum += light[i] * (1.0F - through[i]);
    return sum;
}

void numberFrom(const LimbOrder& order, std::size_t limb, std::size_t& next, LimbNumbers& result)
{
    result.number[limb] = next++;
    for (const std::size_t child : order.children[limb])
        numberFrom(order, child, next, result);
    result.end[limb] = next;
}

} // namespace

LimbNumbers limbNumbers(const Tree& tree)
{
    const auto order = limbOrder(tree);
    LimbNumbers result;
    result.number.resize(tree.limbs.size());
    result.end.resize(tree.limbs.size());
    result.parent = order.parent;
    std::size_t next = 0;
    numberFrom(order, order.trunk, next, result);
    return result;
}

Tallier::Tallier(const SceneBeam& beam, std::span<const LimbNumbers> limbs)
    : beam_(beam), limbs_(limbs)
{
}

void Tallier::add(const Pack& pack, const PackLight& light, Light3 worth, Tally& tally)
{
    for (std::size_t i = 0; i < pack.count; ++i)
        tally.points[pack.point[i]] += light.all[i] * worth;
    const Light3 mean = (1.0 / static_cast<double>(tally.points.size())) * worth;
    tally.open += static_cast<double>(pack.count) * mean;
    tally.structures += sumOf(pack, light.structures) * mean;
    tally.standing += sumOf(pack, light.all) * mean;
    for (const auto& tree : light.trees) {
        Lanes others = light.structures;
        for (const auto& other : light.trees)
            for (std::size_t i = 0; i < kLanes && other.tree != tree.tree; ++i)
                others[i] *= other.through[i];
        auto& taken = tally.trees[tree.tree];
        taken.removal += sumOfLoss(pack, others, tree.through) * mean;
        taken.firstIn += sumOfLoss(pack, light.structures, tree.through) * mean;
        if (!limbs_.empty())
            addLimbs(pack, light, tree, others, mean, tally);
    }
}

void Tallier::addLimbs(const Pack& pack, const PackLight& light, const TreeLight& tree,
                       const Lanes& others, Light3 worth, Tally& tally)
{
    const auto& numbers = limbs_[tree.tree];
    const auto& beam = beam_.tree(tree.tree);
    const auto met = light.crossings.from(tree.firstCrossing).first(tree.crossings);
    touched_.clear();
    numbers_.resize(met.size());
    for (std::size_t row = 0; row < met.size(); ++row)
        for (std::size_t lane = 0; lane < kLanes; ++lane) {
            if (!(met[row].from[lane] < kMissed))
                continue;
            std::size_t limb = beam.bodies()[met[row].body[lane]].limb;
            numbers_[row][lane] = static_cast<std::int32_t>(numbers.number[limb]);
            while (limb != kNoLimb && std::ranges::find(touched_, limb) == touched_.end()) {
                touched_.push_back(limb);
                limb = numbers.parent[limb];
            }
        }
    const auto throughOf = [&](std::size_t limb, bool allBut, Lanes& share) {
        const LimbChoice choice{numbers_.data(), static_cast<std::int32_t>(numbers.number[limb]),
                                static_cast<std::int32_t>(numbers.end[limb]), allBut};
        Lanes path;
        Lanes wood;
        leafyPath(met, beam, choice, path, wood);
        through(path, wood, beam_.extinction_1_m(tree.tree), share);
    };
    for (const std::size_t limb : touched_) {
        auto& taken = tally.limbs[{tree.tree, limb}];
        Lanes share;
        throughOf(limb, true, share);
        taken.removal +=
            (sumOfProduct(pack, others, share) - sumOfProduct(pack, others, tree.through)) * worth;
        throughOf(limb, false, share);
        taken.firstIn += sumOfLoss(pack, light.structures, share) * worth;
    }
}

} // namespace model::light
