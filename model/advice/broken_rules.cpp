#include "model/advice/broken_rules.hpp"

#include "model/advice/cleaning.hpp"
#include "model/advice/crown_shape.hpp"
#include "model/advice/limb_faults.hpp"
#include "model/advice/limits.hpp"
#include "model/advice/prune.hpp"

#include <algorithm>
#include <numbers>
#include <numeric>

namespace model::advice {
namespace {

constexpr double kHair = 1e-9;
constexpr double kSawWidth_m = 1e-3; // a saw is no finer

double disc_m2(double diameter_m)
{
    return std::numbers::pi / 4.0 * diameter_m * diameter_m;
}

double leafBeyond_m2(const Tree& tree, const Foliation& foliation, std::size_t limb)
{
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    const auto all = limbAndBeyond(limbOrder(tree), limb);
    return std::accumulate(all.begin(), all.end(), 0.0,
                           [&](double sum, std::size_t i) { return sum + areas[i]; });
}

/// Conifers don't shoot again from wood without green; yew and a few others do, and are rated so.
bool staysBare(const Species& species)
{
    return species.wood.woodClass == WoodClass::conifer &&
           species.practice.sprouting != Rating::high;
}

class Look {
public:
    Look(const Tree& tree, const Foliation& foliation, const Species& species, double allowance)
        : tree_(tree), foliation_(foliation), species_(species), allowance_(allowance),
          faulty_m_(faultyFrom_m(tree))
    {
    }

    std::vector<Finding> at(std::span<const Cut> cuts)
    {
        Tree standing = tree_;
        for (const auto& cut : cuts) {
            atCut(standing, cut);
            standing = afterCut(standing, cut);
        }
        atWounds(cuts);
        atCrown(standing);
        return std::move(broken_);
    }

private:
    void broke(Rule rule, const std::string& limb, double found, double limit)
    {
        broken_.push_back({rule, Severity::block, limb, found, limit});
    }

    [[nodiscard]] bool isFaulty(const Cut& cut) const
    {
        const auto from = faulty_m_[limbIndex(tree_, cut.limb)];
        return from && *from <= cut.at_m + kSawWidth_m;
    }

    void atCut(const Tree& standing, const Cut& cut)
    {
        if (cut.kind != CutKind::reduction || isFaulty(cut))
            return;
        const auto index = limbIndex(standing, cut.limb);
        const auto& limb = standing.limbs[index];
        if (!limb.parent)
            broken_.push_back(
                {Rule::topping, Severity::block, limb.id, std::nullopt, std::nullopt});
        double lateral_m = 0.0;
        for (const auto& other : standing.limbs)
            if (other.parent == limb.id && std::abs(other.attachedAt_m - cut.at_m) <= kSawWidth_m)
                lateral_m = std::max(lateral_m, other.stations.front().diameter_m);
        const double ratio = lateral_m / axisPoint(limb, cut.at_m).diameter_m;
        if (ratio < kLateralLeast - kHair)
            broke(Rule::lateralThird, limb.id, ratio, kLateralLeast);
        const double before = leafBeyond_m2(standing, foliation_, index);
        const Tree after = afterCut(standing, cut);
        const double taken =
            before > 0.0
                ? 1.0 - leafBeyond_m2(after, foliation_, limbIndex(after, cut.limb)) / before
                : 0.0;
        if (taken > kLimbShareMost + kHair)
            broke(Rule::limbShare, limb.id, taken, kLimbShareMost);
        if (staysBare(species_) && taken >= 1.0 - kHair)
            broken_.push_back(
                {Rule::bareConifer, Severity::block, limb.id, std::nullopt, std::nullopt});
    }

    void atWounds(std::span<const Cut> cuts)
    {
        double sum_m2 = 0.0;
        for (const auto& cut : cuts)
            if (cut.kind == CutKind::removal || cut.kind == CutKind::reduction)
                sum_m2 += disc_m2(
                    axisPoint(tree_.limbs[limbIndex(tree_, cut.limb)], cut.at_m).diameter_m);
        const double stem_m2 = disc_m2(stemDiameter_m(tree_));
        if (sum_m2 > kWoundSum * stem_m2 + kHair)
            broke(Rule::woundSum, {}, sum_m2 / stem_m2, kWoundSum);
    }

    void atCrown(const Tree& standing)
    {
        const auto total = [&](const Tree& tree) {
            const auto areas = leafAreaByLimb_m2(tree, foliation_);
            return std::accumulate(areas.begin(), areas.end(), 0.0);
        };
        const double whole = foliation_.leafArea_m2;
        const double share = whole > 0.0 ? (total(tree_) - total(standing)) / whole : 0.0;
        if (share > allowance_ + kHair)
            broke(Rule::seasonShare, {}, share, allowance_);
        const auto before = crownShape(tree_, foliation_);
        const auto after = crownShape(standing, foliation_);
        const auto atLeast = [&](Rule rule, double CrownShape::*of, double least) {
            if (after.*of < std::min(least, before.*of) - kHair)
                broke(rule, {}, after.*of, std::min(least, before.*of));
        };
        atLeast(Rule::liveCrownRatio, &CrownShape::liveCrownRatio, kLiveCrownRatioLeast);
        atLeast(Rule::lowerTwoThirds, &CrownShape::lowerTwoThirdsLeaf, kLowerTwoThirdsLeast);
        const auto tails =
            lionTails(tree_, innerLeafShares(tree_, foliation_), standing, foliation_);
        broken_.insert(broken_.end(), tails.begin(), tails.end());
    }

    const Tree& tree_;
    const Foliation& foliation_;
    const Species& species_;
    double allowance_;
    std::vector<std::optional<double>> faulty_m_;
    std::vector<Finding> broken_;
};

} // namespace

std::vector<Finding> brokenRules(const Tree& tree, const Foliation& foliation,
                                 const Species& species, double allowance,
                                 std::span<const Cut> cuts)
{
    return Look(tree, foliation, species, allowance).at(cuts);
}

} // namespace model::advice
