#include "model/advice/suggestion.hpp"

#include "model/advice/allowance.hpp"
#include "model/advice/crown_shape.hpp"
#include "model/advice/cut_work.hpp"
#include "model/advice/headroom_goal.hpp"
#include "model/advice/limits.hpp"
#include "model/advice/prune.hpp"
#include "model/advice/search.hpp"
#include "model/advice/who.hpp"
#include "model/load/sag.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <numbers>

namespace model::advice {
namespace {

constexpr double kUnlimited = std::numeric_limits<double>::infinity();

/// The rules that can stand between a gardener and enough headroom.
constexpr std::array kQuantityRules{Rule::seasonShare, Rule::woundSum, Rule::limbShare,
                                    Rule::liveCrownRatio, Rule::lowerTwoThirds};

/// One tree and its guideline: answers "what is the least leaf for these heights?".
class Guideline {
public:
    Guideline(const Tree& tree, const Tree& sagging, const Foliation& foliation, double allowance,
              const std::atomic<bool>* cancel)
        : tree_(tree), sagging_(sagging), foliation_(foliation), allowance_(allowance),
          cancel_(cancel), before_(crownShape(tree, foliation))
    {
    }

    /// \param without  a rule left out of account, to see whether it is the one that binds
    Choice least(const std::vector<HeadroomGoal>& goals,
                 std::optional<Rule> without = std::nullopt) const
    {
        auto decisions = headroomDecisions(tree_, foliation_, goals,
                                           {.limbShare = without != Rule::limbShare}, &sagging_);
        const double stem_m = stemDiameter_m(tree_);
        decisions.leafMost = without == Rule::seasonShare ? kUnlimited : allowance_;
        decisions.woundMost_m2 = without == Rule::woundSum
                                     ? kUnlimited
                                     : kWoundSum * std::numbers::pi / 4.0 * stem_m * stem_m;
        decisions.crownAccepts = [this, without](const std::vector<Cut>& cuts) {
            return accepts(crownShape(afterCuts(tree_, cuts), foliation_), without);
        };
        return leastLeaf(decisions, cancel_);
    }

    [[nodiscard]] double leastWithoutAny(const std::vector<HeadroomGoal>& goals) const
    {
        const auto decisions =
            headroomDecisions(tree_, foliation_, goals, {.limbShare = false}, &sagging_);
        const double least = relaxedLeaf(decisions)[decisions.root];
        return least < kUnlimited ? least : 0.0;
    }

    [[nodiscard]] const CrownShape& before() const { return before_; }

private:
    /// A crown that already breaks a rule must not be made to break it further.
    bool accepts(const CrownShape& after, std::optional<Rule> without) const
    {
        constexpr double kRounding = 1e-9;
        const double ratioLeast = std::min(kLiveCrownRatioLeast, before_.liveCrownRatio);
        const double lowerLeast = std::min(kLowerTwoThirdsLeast, before_.lowerTwoThirdsLeaf);
        return (without == Rule::liveCrownRatio ||
                after.liveCrownRatio >= ratioLeast - kRounding) &&
               (without == Rule::lowerTwoThirds ||
                after.lowerTwoThirdsLeaf >= lowerLeast - kRounding);
    }

    const Tree& tree_;
    const Tree& sagging_;
    const Foliation& foliation_;
    double allowance_;
    const std::atomic<bool>* cancel_;
    CrownShape before_;
};

/// Goals at a share of the way from what each strip has (0) to what it needs (1).
std::vector<HeadroomGoal> partWay(std::vector<HeadroomGoal> goals,
                                  const std::vector<headroom::StripHeadroom>& now,
                                  const std::vector<double>& shares)
{
    for (std::size_t i = 0; i < goals.size(); ++i)
        if (const auto height = now[i].worstHeight_m(); height && now[i].worstShortfall_m() > 0.0)
            goals[i].height_m = *height + shares[i] * now[i].worstShortfall_m();
    return goals;
}

/// The closest that the guideline allows: first every strip gets the same share of what it lacks,
/// as large as can be; then each strip in turn gets more if it can.
Choice closest(const Guideline& guideline, const std::vector<HeadroomGoal>& goals,
               const std::vector<headroom::StripHeadroom>& now)
{
    constexpr int kHalvings = 12; // to a four-thousandth of what is lacking
    std::vector<double> shares(goals.size(), 0.0);
    Choice best{.found = true, .cuts = {}, .leaf = 0.0, .proven = true, .nodes = 0};
    const auto raise = [&](const std::vector<std::size_t>& strips) {
        double low = shares[strips.front()];
        double high = 1.0;
        for (int i = 0; i < kHalvings; ++i) {
            auto tried = shares;
            const double middle = (low + high) / 2.0;
            for (const auto strip : strips)
                tried[strip] = middle;
            auto choice = guideline.least(partWay(goals, now, tried));
            choice.nodes += best.nodes;
            (choice.found ? low : high) = middle;
            if (choice.found) {
                best = std::move(choice);
                shares = std::move(tried);
            } else {
                best.nodes = choice.nodes;
            }
        }
    };
    std::vector<std::size_t> lacking;
    for (std::size_t i = 0; i < now.size(); ++i)
        if (now[i].worstShortfall_m() > 0.0)
            lacking.push_back(i);
    raise(lacking);
    if (lacking.size() > 1)
        for (const auto strip : lacking)
            raise({strip});
    return best;
}

std::vector<Finding> bindingRules(const Guideline& guideline,
                                  const std::vector<HeadroomGoal>& goals, double allowance)
{
    std::vector<Finding> binding;
    for (const auto rule : kQuantityRules) {
        const auto choice = guideline.least(goals, rule);
        if (!choice.found)
            continue;
        const bool share = rule == Rule::seasonShare;
        binding.push_back({rule,
                           Severity::block,
                           {},
                           share ? std::optional(choice.leaf) : std::nullopt,
                           share ? std::optional(allowance) : std::nullopt});
    }
    return binding;
}

/// Lifts first, they only need secateurs; then from the top down, so that nothing falls on a limb
/// that still has to be worked on.
std::vector<Cut> inWorkingOrder(const Tree& tree, std::vector<Cut> cuts)
{
    const auto height = [&tree](const Cut& cut) {
        const auto& limb = tree.limbs[limbIndex(tree, cut.limb)];
        return axisPoint(limb, cut.at_m).position_m.z;
    };
    std::ranges::stable_sort(cuts, [&](const Cut& a, const Cut& b) {
        const bool aLifts = a.kind == CutKind::lifting;
        const bool bLifts = b.kind == CutKind::lifting;
        return aLifts != bLifts ? aLifts : height(a) > height(b);
    });
    return cuts;
}

std::vector<Finding> crownNotes(const CrownShape& before, const CrownShape& after, double share)
{
    std::vector<Finding> notes;
    if (share > kOrdinaryShare)
        notes.push_back({Rule::ordinaryShare, Severity::inform, {}, share, kOrdinaryShare});
    const double raised = (after.base_m - before.base_m) / (before.top_m - before.base_m);
    if (raised > kRaiseStep)
        notes.push_back({Rule::raiseStep, Severity::warn, {}, raised, kRaiseStep});
    if (after.liveCrownRatio < kLiveCrownRatioGood)
        notes.push_back(
            {Rule::liveCrownRatio, Severity::warn, {}, after.liveCrownRatio, kLiveCrownRatioGood});
    return notes;
}

std::vector<headroom::StripHeadroom> headroomOf(const Garden& garden, const Tree& tree,
                                                const Foliation& foliation, const Species& species)
{
    return headroom::treeHeadroom(garden, tree,
                                  load::sagUnder(tree, foliation, species, load::kHeaviest).tree);
}

void describe(const Garden& garden, const Tree& tree, const Foliation& foliation,
              const Species& species, const Choice& choice, Suggestion& suggestion)
{
    suggestion.proven = choice.proven;
    suggestion.nodes += choice.nodes;
    Tree standing = tree;
    for (const auto& cut : inWorkingOrder(tree, choice.cuts)) {
        suggestion.cuts.push_back(plannedCut(garden, standing, cut, foliation, species));
        suggestion.leafShare += suggestion.cuts.back().leafShare;
        suggestion.labour = together(suggestion.labour, suggestion.cuts.back().labour);
        standing = afterCut(standing, cut);
    }
    suggestion.after = headroomOf(garden, standing, foliation, species);
    if (!choice.cuts.empty())
        suggestion.notes = crownNotes(crownShape(tree, foliation), crownShape(standing, foliation),
                                      suggestion.leafShare);
}

/// The garden with so much more headroom asked for over every strip.
Garden withSpare(const Garden& garden, double spare_m)
{
    Garden raised = garden;
    for (auto& strip : raised.strips)
        strip.headroom_m = headroom::neededHeadroom_m(strip) + spare_m;
    return raised;
}

std::vector<Cut> cutsOf(const Suggestion& suggestion)
{
    std::vector<Cut> cuts;
    for (const auto& planned : suggestion.cuts)
        cuts.push_back(planned.cut);
    return cuts;
}

Suggestion suggestCuts(const Garden& garden, const Tree& tree, const Foliation& foliation,
                       const Species& species, std::chrono::year_month_day date,
                       const std::atomic<bool>* cancel)
{
    Suggestion suggestion;
    const auto sagging = load::sagUnder(tree, foliation, species, load::kHeaviest).tree;
    suggestion.before = headroom::treeHeadroom(garden, tree, sagging);
    auto allowed = allowance(tree, species, date);
    suggestion.allowance = allowed.share;
    suggestion.allowanceReasons = std::move(allowed.reasons);
    suggestion.labour = whoForTree(tree);
    const bool lacking = std::ranges::any_of(
        suggestion.before, [](const auto& strip) { return strip.worstShortfall_m() > 0.0; });
    if (!lacking) {
        suggestion.outcome = Outcome::nothingNeeded;
        suggestion.after = suggestion.before;
        suggestion.proven = true;
        return suggestion;
    }
    const Guideline guideline(tree, sagging, foliation, suggestion.allowance, cancel);
    const auto goals = headroomGoals(garden, tree);
    auto choice = guideline.least(goals);
    suggestion.outcome = choice.found ? Outcome::met : Outcome::notWithinGuideline;
    suggestion.leafShareWithoutGuideline = guideline.leastWithoutAny(goals);
    if (!choice.found) {
        suggestion.nodes = choice.nodes;
        suggestion.binding = bindingRules(guideline, goals, suggestion.allowance);
        choice = closest(guideline, goals, suggestion.before);
    }
    describe(garden, tree, foliation, species, choice, suggestion);
    const auto calendar = calendarNotes(species, garden.place.latitude_deg, date);
    if (!suggestion.cuts.empty())
        suggestion.notes.insert(suggestion.notes.end(), calendar.begin(), calendar.end());
    if (tree.protection == Protection::unknown && !suggestion.cuts.empty())
        suggestion.notes.push_back(
            {Rule::protectedTree, Severity::inform, {}, std::nullopt, std::nullopt});
    return suggestion;
}

} // namespace

Suggestion suggest(const Garden& garden, const Tree& tree, const Foliation& foliation,
                   const Species& species, std::chrono::year_month_day date, Aim aim,
                   const std::atomic<bool>* cancel)
{
    auto suggestion =
        suggestCuts(withSpare(garden, aim.spare_m), tree, foliation, species, date, cancel);
    const Tree standing = afterCuts(tree, cutsOf(suggestion));
    suggestion.spare_m = aim.spare_m;
    // Against the need, without spare.
    suggestion.before = headroomOf(garden, tree, foliation, species);
    suggestion.after = headroomOf(garden, standing, foliation, species);
    suggestion.shoots = growth::shootRate(tree, species, garden.place, suggestion.leafShare);
    suggestion.regrowth =
        growth::regrowth(garden, load::sagUnder(standing, foliation, species, load::kHeaviest).tree,
                         species, suggestion.shoots, date);
    return suggestion;
}

} // namespace model::advice
