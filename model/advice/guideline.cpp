#include "model/advice/guideline.hpp"

#include "model/advice/limits.hpp"
#include "model/advice/prune.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <numbers>
#include <utility>

namespace model::advice {
namespace {

constexpr double kUnlimited = std::numeric_limits<double>::infinity();

/// The rules that can stand between a gardener and a goal.
constexpr std::array kQuantityRules{Rule::seasonShare, Rule::woundSum, Rule::limbShare,
                                    Rule::liveCrownRatio, Rule::lowerTwoThirds};

bool holds(const std::vector<Rule>& rules, Rule rule)
{
    return std::ranges::find(rules, rule) != rules.end();
}

/// Goals are reached by a little less than what cuts could do at most. A search that believes so
/// comes upon good sets soon, and the search that trusts only the bound starts from the best of
/// them.
Choice leastWithStart(Decisions decisions, const std::atomic<bool>* cancel)
{
    constexpr double kLikely = 0.8; // of what a cut could do at most
    if (decisions.goals == 0)
        return leastLeaf(decisions, cancel);
    Decisions likely = decisions;
    for (auto& options : likely.options)
        for (auto& option : options)
            for (double& help : option.helps)
                help *= kLikely;
    decisions.start = leastLeaf(likely, cancel);
    auto choice = leastLeaf(decisions, cancel);
    choice.nodes += decisions.start.nodes;
    return choice;
}

} // namespace

Guideline::Guideline(const Tree& tree, const Foliation& foliation, double allowance,
                     const std::atomic<bool>* cancel, Effort effort)
    : tree_(tree), foliation_(foliation), allowance_(allowance), cancel_(cancel), effort_(effort),
      before_(crownShape(tree, foliation))
{
}

Choice Guideline::least(const Targets& targets, const std::vector<Rule>& without) const
{
    auto decisions = options(tree_, foliation_, targets.wanted(),
                             {.limbShare = !holds(without, Rule::limbShare)});
    decisions.nodesMost = effort_.nodes;
    decisions.askedMost = effort_.asked;
    const double stem_m = stemDiameter_m(tree_);
    decisions.leafMost = holds(without, Rule::seasonShare) ? kUnlimited : allowance_;
    decisions.woundMost_m2 = holds(without, Rule::woundSum)
                                 ? kUnlimited
                                 : kWoundSum * std::numbers::pi / 4.0 * stem_m * stem_m;
    decisions.crownAccepts = [this, &without, &targets](const std::vector<Cut>& cuts) {
        const Tree after = afterCuts(tree_, cuts);
        return accepts(crownShape(after, foliation_), without) && targets.met(after);
    };
    return leastWithStart(std::move(decisions), cancel_);
}

Choice Guideline::leastWithoutAny(const Targets& targets) const
{
    auto decisions = options(tree_, foliation_, targets.wanted(), {.limbShare = false});
    decisions.leafMost = kUnlimited;
    decisions.woundMost_m2 = kUnlimited;
    decisions.nodesMost = effort_.nodes;
    decisions.askedMost = effort_.asked;
    decisions.crownAccepts = [this, &targets](const std::vector<Cut>& cuts) {
        return targets.met(afterCuts(tree_, cuts));
    };
    return leastWithStart(std::move(decisions), cancel_);
}

std::vector<Finding> Guideline::binding(const Targets& targets) const
{
    std::vector<Finding> binding;
    for (const auto rule : kQuantityRules) {
        const auto choice = least(targets, {rule});
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
bool Guideline::accepts(const CrownShape& after, const std::vector<Rule>& without) const
{
    constexpr double kRounding = 1e-9;
    const double ratioLeast = std::min(kLiveCrownRatioLeast, before_.liveCrownRatio);
    const double lowerLeast = std::min(kLowerTwoThirdsLeast, before_.lowerTwoThirdsLeaf);
    return (holds(without, Rule::liveCrownRatio) ||
            after.liveCrownRatio >= ratioLeast - kRounding) &&
           (holds(without, Rule::lowerTwoThirds) ||
            after.lowerTwoThirdsLeaf >= lowerLeast - kRounding);
}

} // namespace model::advice
