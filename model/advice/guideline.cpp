#include "model/advice/guideline.hpp"

#include "model/advice/limb_faults.hpp"
#include "model/advice/limits.hpp"
#include "model/advice/prune.hpp"
#include "model/advice/tail_limits.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace model::advice {
namespace {

constexpr double kUnlimited = std::numeric_limits<double>::infinity();

/// The rules that can stand between a gardener and a goal.
constexpr std::array kQuantityRules{Rule::seasonShare,    Rule::woundSum,       Rule::limbShare,
                                    Rule::liveCrownRatio, Rule::lowerTwoThirds, Rule::lionTail};

/// A node takes longer the larger the tree is.
long nodesMost(long effort, std::size_t limbs)
{
    constexpr double kLimbs = 16.0;
    const double share = std::min(1.0, kLimbs / static_cast<double>(limbs));
    return std::max(50L, static_cast<long>(std::pow(share, 1.9) * static_cast<double>(effort)));
}

bool holds(const std::vector<Rule>& rules, Rule rule)
{
    return std::ranges::find(rules, rule) != rules.end();
}

} // namespace

Guideline::Guideline(const Tree& tree, const Foliation& foliation, double allowance,
                     const std::atomic<bool>* cancel, Effort effort)
    : tree_(tree), foliation_(foliation), allowance_(allowance), cancel_(cancel),
      effort_(std::move(effort)), before_(crownShape(tree, foliation)),
      innerBefore_(innerLeafShares(tree, foliation))
{
}

Guideline::Limits Guideline::limits(const std::vector<Rule>& without) const
{
    const double stem_m = stemDiameter_m(tree_);
    return {.leaf = holds(without, Rule::seasonShare) ? kUnlimited : allowance_,
            .wound_m2 = holds(without, Rule::woundSum)
                            ? kUnlimited
                            : kWoundSum * std::numbers::pi / 4.0 * stem_m * stem_m,
            .limbShare = !holds(without, Rule::limbShare),
            .lionTail = !holds(without, Rule::lionTail),
            .crown = [this, without](const Tree& after) { return accepts(after, without); }};
}

Choice Guideline::least(const Targets& targets, const std::vector<Rule>& without) const
{
    return leastWithin(limits(without), targets);
}

Choice Guideline::any(const Targets& targets) const
{
    auto all = limits({});
    all.anyWillDo = true;
    return leastWithin(all, targets);
}

Choice Guideline::leastWithoutAny(const Targets& targets) const
{
    return leastWithin(
        {.leaf = kUnlimited, .wound_m2 = kUnlimited, .crown = [](const Tree&) { return true; }},
        targets);
}

/// Where a limb would be left as a lion's tail, its end may be cut back as well; the more limbs'
/// ends are looked at, the longer a search takes, so only of those that stood in the way.
Choice Guideline::leastWithin(const Limits& limits, const Targets& targets) const
{
    auto wanted = targets.wanted();
    wanted.ends.resize(tree_.limbs.size());
    auto found = leastOf(limits, targets, wanted, {});
    while (found.mayHelp(wanted.ends) && (found.choice.proven || !found.choice.found) &&
           !(cancel_ && cancel_->load(std::memory_order_relaxed))) {
        for (const auto limb : found.tails)
            wanted.ends[limb] = true;
        auto more = leastOf(limits, targets, wanted, found.choice);
        more.choice.nodes += found.choice.nodes;
        more.choice.asked += found.choice.asked;
        found = std::move(more);
    }
    return found.choice;
}

Guideline::Found Guideline::leastOf(const Limits& limits, const Targets& targets,
                                    const Wanted& wanted, Choice known) const
{
    auto decisions = options(tree_, foliation_, wanted, {limits.limbShare});
    decisions.leafMost = limits.leaf;
    decisions.woundMost_m2 = limits.wound_m2;
    decisions.nodesMost = nodesMost(effort_.nodes, tree_.limbs.size());
    decisions.askedMost = effort_.asked;
    decisions.measuresMost = effort_.measures;
    decisions.anyWillDo = limits.anyWillDo;
    const LimbStates states(tree_, foliation_, decisions);
    auto tails = limits.lionTail ? tailLimits(tree_, foliation_, states) : TailLimits{};
    decisions.limits = std::move(tails.limits);
    const auto searched = [&] {
        Found found{leastLeaf(decisions, cancel_), {}};
        for (const auto limit : found.choice.limiting)
            found.tails.push_back(tails.limbs[limit]);
        return found;
    };
    decisions.crownAccepts = [&](const std::vector<Cut>& cuts) {
        const Tree after = afterCuts(tree_, cuts);
        return limits.crown(after) && targets.met(after);
    };
    known.taken.clear(); // options of another row
    decisions.start = std::move(known);
    decisions.progress = effort_.progress;
    if (decisions.goals == 0)
        return searched();
    decisions.missing = [&](const Picks& picks, const std::vector<Cut>& cuts) {
        const Tree after = afterCuts(tree_, cuts);
        return limits.crown(after) ? targets.missing(after, states, picks) : std::vector<double>{};
    };
    decisions.lookCloser = [&](const Allowed& allowed, double leafMost, const PerOption& likely,
                               Reach& reach) {
        targets.lookCloser(states, allowed, leafMost, likely, reach);
    };
    if (!decisions.start.found)
        decisions.start = likely(decisions);
    decisions.start.proven = false; // as long as it was but believed
    decisions.start.bound = 0.0;
    if (decisions.anyWillDo && decisions.start.found)
        return {decisions.start, {}};
    return searched();
}

/// Goals are reached by a little less than what cuts could do at most. A search that believes so
/// comes upon good sets soon, and the search that trusts only the bound starts from the best of
/// them. Where that finds none, it believes still less.
Choice Guideline::likely(const Decisions& decisions) const
{
    Choice found;
    for (const double share : {0.85, 0.7, 0.55, 0.4}) { // of what a cut could do at most
        Decisions doubtful = decisions;
        doubtful.missing = nullptr;
        doubtful.progress = nullptr;
        doubtful.nodesMost /= 8;
        doubtful.askedMost /= 8;
        doubtful.lookCloser = [&](const Allowed& allowed, double leafMost, const PerOption& likely,
                                  Reach& reach) {
            const auto before = reach.helps;
            decisions.lookCloser(allowed, leafMost, likely, reach);
            for (std::size_t row = 0; row < before.size(); ++row)
                if (likely.empty() ||
                    reach.helps[row] != before[row]) // else it is in doubt already
                    for (double& help : reach.helps[row])
                        help *= share;
        };
        found = leastLeaf(doubtful, cancel_);
        if (found.found)
            break;
    }
    return found;
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
bool Guideline::accepts(const Tree& cut, const std::vector<Rule>& without) const
{
    constexpr double kRounding = 1e-9;
    const auto after = crownShape(cut, foliation_);
    const double ratioLeast = std::min(kLiveCrownRatioLeast, before_.liveCrownRatio);
    const double lowerLeast = std::min(kLowerTwoThirdsLeast, before_.lowerTwoThirdsLeaf);
    return (holds(without, Rule::liveCrownRatio) ||
            after.liveCrownRatio >= ratioLeast - kRounding) &&
           (holds(without, Rule::lowerTwoThirds) ||
            after.lowerTwoThirdsLeaf >= lowerLeast - kRounding) &&
           (holds(without, Rule::lionTail) ||
            lionTails(tree_, innerBefore_, cut, foliation_).empty());
}

} // namespace model::advice
