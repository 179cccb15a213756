#include "model/light/tally.hpp"

#include <algorithm>
#include <bit>
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

double sumOfLoss(const Lanes& light, const Lanes& through)
{
    Lanes loss;
    for (std::size_t i = 0; i < kLanes; ++i)
        loss[i] = light[i] * (1.0F - through[i]);
    return sumOf(loss);
}

/// Both in order of their keys.
template <typename Key>
void addTaken(double weight, const std::vector<std::pair<Key, Taken3>>& more,
              std::vector<std::pair<Key, Taken3>>& sum)
{
    std::vector<std::pair<Key, Taken3>> both;
    both.reserve(sum.size() + more.size());
    auto old = sum.begin();
    for (const auto& [key, taken] : more) {
        for (; old != sum.end() && old->first < key; ++old)
            both.push_back(*old);
        both.emplace_back(key, weight * taken);
        if (old != sum.end() && old->first == key)
            both.back().second += (old++)->second;
    }
    both.insert(both.end(), old, sum.end());
    sum = std::move(both);
}

void multiply(Lanes& by, const Lanes& share)
{
    for (std::size_t i = 0; i < kLanes; ++i)
        by[i] *= share[i];
}

} // namespace

void add(double weight, const Tally& more, Tally& sum)
{
    sum.open += weight * more.open;
    sum.structures += weight * more.structures;
    sum.standing += weight * more.standing;
    addTaken(weight, more.trees, sum.trees);
    addTaken(weight, more.limbs, sum.limbs);
    for (std::size_t i = 0; i < sum.points.size(); ++i)
        sum.points[i] += weight * more.points[i];
}

Tallier::Tallier(SceneBeam& beam, std::span<const LimbNumbers> limbs)
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
    for (std::size_t tree = 0; tree < limbs.size(); ++tree)
        beam.numberLimbs(tree, limbs[tree].number);
    isMet_.resize(most / 64 + 1);
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

void Tallier::findMet(std::span<const Crossing> rows, const LimbNumbers& numbers)
{
    constexpr std::size_t kBits = 64;
    laneWork().limbsMet(rows.data(), rows.size(), isMet_.data());
    met_.clear();
    for (std::size_t word = (numbers.limb.size() + kBits - 1) / kBits; word-- > 0;)
        while (isMet_[word] != 0) { // from the highest number down: parents have lower ones
            const std::size_t bit =
                kBits - 1 - static_cast<std::size_t>(std::countl_zero(isMet_[word]));
            isMet_[word] ^= std::uint64_t{1} << bit;
            const std::size_t limb = numbers.limb[kBits * word + bit];
            met_.push_back(limb);
            if (numbers.parent[limb] == kNoLimb)
                continue;
            const std::size_t parent = numbers.number[numbers.parent[limb]];
            isMet_[parent / kBits] |= std::uint64_t{1} << parent % kBits;
        }
}

void Tallier::addLimbs(const PackLight& light, const TreeLight& tree, const Lanes& others,
                       const Lanes& open, const Taken3& whole, Light3 worth)
{
    const auto& numbers = limbs_[tree.tree];
    const auto rows = light.crossings.from(tree.firstCrossing).first(tree.crossings);
    findMet(rows, numbers);
    ranges_.clear();
    for (const std::size_t limb : met_)
        ranges_.push_back({static_cast<std::int32_t>(numbers.number[limb]),
                           static_cast<std::int32_t>(numbers.end[limb])});
    losses_.resize(met_.size());
    limbLosses(rows, beam_.tree(tree.tree), ranges_,
               {beam_.extinction_1_m(tree.tree), open, others, tree.through}, losses_);
    for (std::size_t i = 0; i < met_.size(); ++i) {
        const std::size_t limb = met_[i];
        auto& sum = limbSums_[firstLimb_[tree.tree] + limb];
        if (!sum.touched)
            shaderLimbs_.emplace_back(tree.tree, limb);
        sum.touched = true;
        if (numbers.parent[limb] == kNoLimb) // all grows from the trunk
            sum.taken += whole;
        else
            sum.taken += {losses_[i].removal * worth, losses_[i].firstIn * worth};
    }
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
