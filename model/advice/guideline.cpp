#include "model/advice/guideline.hpp"

#include "model/advice/limits.hpp"
#include "model/advice/prune.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <numbers>

namespace model::advice {
namespace {

constexpr double kUnlimited = std::numeric_limits<double>::infinity();

/// The rules that can stand between a gardener and a goal.
constexpr std::array kQuantityRules{Rule::seasonShare, Rule::woundSum, Rule::limbShare,
                                    Rule::liveCrownRatio, Rule::lowerTwoThirds};

} // namespace

Guideline::Guideline(const Tree& tree, const Foliation& foliation, double allowance,
                     const std::atomic<bool>* cancel)
    : tree_(tree), foliation_(foliation), allowance_(allowance), cancel_(cancel),
      before_(crownShape(tree, foliation))
{
}

Choice Guideline::least(const Targets& targets, std::optional<Rule> without) const
{
    auto decisions =
        options(tree_, foliation_, targets.wanted(), {.limbShare = without != Rule::limbShare});
    const double stem_m = stemDiameter_m(tree_);
    decisions.leafMost = without == Rule::seasonShare ? kUnlimited : allowance_;
    decisions.woundMost_m2 = without == Rule::woundSum
                                 ? kUnlimited
                                 : kWoundSum * std::numbers::pi / 4.0 * stem_m * stem_m;
    decisions.crownAccepts = [this, without, &targets](const std::vector<Cut>& cuts) {
        const Tree after = afterCuts(tree_, cuts);
        return accepts(crownShape(after, foliation_), without) && targets.met(after);
    };
    return leastLeaf(decisions, cancel_);
}

double Guideline::leastWithoutAny(const Targets& targets) const
{
    auto decisions = options(tree_, foliation_, targets.wanted(), {.limbShare = false});
    decisions.leafMost = kUnlimited;
    decisions.woundMost_m2 = kUnlimited;
    decisions.crownAccepts = [this, &targets](const std::vector<Cut>& cuts) {
        return targets.met(afterCuts(tree_, cuts));
    };
    return leastLeaf(decisions, cancel_).leaf;
}

std::vector<Finding> Guideline::binding(const Targets& targets) const
{
    std::vector<Finding> binding;
    for (const auto rule : kQuantityRules) {
        const auto choice = least(targets, rule);
        if (!choice.found)
            continue;
        const bool share = rule == Rule::seasonShare;
        binding.push_back({rule,
                           Severity::block,
                           {},
                           share ? std::optional(choice.leaf) : std::nullopt,
                           share ? std::optional(allowance_) : std::nullopt});
    }
    return binding;
}

/// A crown that already breaks a rule must not be made to break it further.
bool Guideline::accepts(const CrownShape& after, std::optional<Rule> without) const
{
    constexpr double kRounding = 1e-9;
    const double ratioLeast = std::min(kLiveCrownRatioLeast, before_.liveCrownRatio);
    const double lowerLeast = std::min(kLowerTwoThirdsLeast, before_.lowerTwoThirdsLeaf);
    return (without == Rule::liveCrownRatio || after.liveCrownRatio >= ratioLeast - kRounding) &&
           (without == Rule::lowerTwoThirds || after.lowerTwoThirdsLeaf >= lowerLeast - kRounding);
}

} // namespace model::advice
