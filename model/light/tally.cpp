#include "model/light/tally.hpp"

#include <algorithm>
#include <utility>

namespace model::light {
namespace {

double sumOf(const Lanes& lanes)
{
    float sum = 0.0F;
    for (const float lane : lanes)
        sum += lane;
    return sum;
}

double sumOfProduct(const Lanes& a, const Lanes& b)
{
    Lanes product;
    for (std::size_t i = 0; i < kLanes; ++i)
        product[i] = a[i] * b[i];
    return sumOf(product);
}

double sumOfLoss(const Lanes& light, const Lanes& through)
{
    Lanes loss;
    for (std::size_t i = 0; i < kLanes; ++i)
        loss[i] = light[i] * (1.0F - through[i]);
    return sumOf(loss);
}

void multiply(Lanes& by, const Lanes& share)
{
    for (std::size_t i = 0; i < kLanes; ++i)
        by[i] *= share[i];
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
    : beam_(beam), limbs_(limbs), treeSums_(beam.treeCount())
{
    std::size_t next = 0;
    std::size_t most = 0;
    for (const auto& tree : limbs) {
        firstLimb_.push_back(next);
        next += tree.number.size();
        most = std::max(most, tree.number.size());
    }
    limbSums_.resize(next);
    isMet_.resize(most);
}

void Tallier::add(const Pack& pack, const PackLight& light, Light3 worth, Tally& tally)
{
    for (std::size_t i = 0; i < pack.count; ++i)
        tally.points[pack.point[i]] += light.all[i] * worth;
    const Light3 mean = (1.0 / static_cast<double>(tally.points.size())) * worth;
    Lanes open = light.structures; // of the lanes that count
    Lanes standing = light.all;
    std::fill(open.begin() + static_cast<std::ptrdiff_t>(pack.count), open.end(), 0.0F);
    std::fill(standing.begin() + static_cast<std::ptrdiff_t>(pack.count), standing.end(), 0.0F);
    tally.open += static_cast<double>(pack.count) * mean;
    tally.structures += sumOf(open) * mean;
    tally.standing += sumOf(standing) * mean;
    // What all others let through: those before the tree times those after it.
    before_.resize(light.trees.size());
    Lanes before = open;
    for (std::size_t t = 0; t < light.trees.size(); ++t) {
        before_[t] = before;
        multiply(before, light.trees[t].through);
    }
    Lanes after = allLanes(1.0F);
    for (std::size_t t = light.trees.size(); t-- > 0;) {
        const auto& tree = light.trees[t];
        Lanes others = before_[t];
        multiply(others, after);
        multiply(after, tree.through);
        const Taken3 whole{sumOfLoss(others, tree.through) * mean,
                           sumOfLoss(open, tree.through) * mean};
        auto& sum = treeSums_[tree.tree];
        if (!sum.touched)
            shaders_.push_back(tree.tree);
        sum.touched = true;
        sum.taken += whole;
        if (!limbs_.empty())
            addLimbs(light, tree, others, open, whole, mean);
    }
}

void Tallier::addLimbs(const PackLight& light, const TreeLight& tree, const Lanes& others,
                       const Lanes& open, const Taken3& whole, Light3 worth)
{
    const auto& numbers = limbs_[tree.tree];
    const auto& beam = beam_.tree(tree.tree);
    const auto met = light.crossings.from(tree.firstCrossing).first(tree.crossings);
    met_.clear();
    numbers_.resize(std::max(numbers_.size(), met.size()));
    for (std::size_t row = 0; row < met.size(); ++row)
        for (std::size_t lane = 0; lane < kLanes; ++lane) {
            if (!(met[row].from[lane] < kMissed))
                continue;
            std::size_t limb = beam.bodies()[met[row].body[lane]].limb;
            numbers_[row][lane] = static_cast<std::int32_t>(numbers.number[limb]);
            for (; limb != kNoLimb && isMet_[limb] == 0; limb = numbers.parent[limb]) {
                isMet_[limb] = 1;
                met_.push_back(limb);
            }
        }
    const double standing = sumOfProduct(others, tree.through);
    for (const std::size_t limb : met_) {
        isMet_[limb] = 0;
        touch(tree.tree, limb);
        auto& taken = limbSums_[firstLimb_[tree.tree] + limb].taken;
        if (numbers.parent[limb] == kNoLimb) { // all grows from the trunk
            taken += whole;
            continue;
        }
        const LimbChoice choice{numbers_.data(), static_cast<std::int32_t>(numbers.number[limb]),
                                static_cast<std::int32_t>(numbers.end[limb])};
        Lanes without;
        Lanes only;
        limbShares(met, beam, choice, beam_.extinction_1_m(tree.tree), without, only);
        taken +=
            {(sumOfProduct(others, without) - standing) * worth, sumOfLoss(open, only) * worth};
    }
}

void Tallier::touch(std::size_t tree, std::size_t limb)
{
    auto& sum = limbSums_[firstLimb_[tree] + limb];
    if (!sum.touched)
        shaderLimbs_.emplace_back(tree, limb);
    sum.touched = true;
}

void Tallier::finish(Tally& tally)
{
    std::ranges::sort(shaders_);
    std::ranges::sort(shaderLimbs_);
    for (const std::size_t tree : shaders_)
        tally.trees.emplace_back(tree, std::exchange(treeSums_[tree], {}).taken);
    for (const auto& [tree, limb] : shaderLimbs_)
        tally.limbs.emplace_back(std::pair{tree, limb},
                                 std::exchange(limbSums_[firstLimb_[tree] + limb], {}).taken);
    shaders_.clear();
    shaderLimbs_.clear();
}

} // namespace model::light
