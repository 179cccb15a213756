#include "model/advice/suggestion.hpp"

#include "model/advice/allowance.hpp"
#include "model/advice/closest.hpp"
#include "model/advice/crown_shape.hpp"
#include "model/advice/cut_work.hpp"
#include "model/advice/goal_results.hpp"
#include "model/advice/guideline.hpp"
#include "model/advice/limits.hpp"
#include "model/advice/prune.hpp"
#include "model/advice/who.hpp"
#include "model/advice/work_order.hpp"
#include "model/load/sag.hpp"

#include <algorithm>

namespace model::advice {
namespace {

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
        suggestion.debris = suggestion.debris + debrisOf(suggestion.cuts.back().pieces);
        suggestion.labour = together(suggestion.labour, suggestion.cuts.back().labour);
        standing = afterCut(standing, cut);
    }
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

/// The goals by what becomes of them.
struct Agenda {
    std::vector<Goal> must;   ///< and the wishes that were granted so far
    std::vector<Goal> wishes; ///< not yet looked at
};

Agenda agenda(const Patient& patient, const std::vector<Goal>& goals)
{
    Agenda agenda;
    for (const auto& goal : goals)
        if (canBeAsked(goal, patient))
            (goal.want == Want::must ? agenda.must : agenda.wishes).push_back(goal);
    return agenda;
}

/// The most leaf that may go by the goals themselves.
double mostLeaf(const std::vector<Goal>& goals, double allowance)
{
    for (const auto& goal : goals)
        if (goal.kind == GoalKind::leaf)
            allowance = std::min(allowance, *goal.value);
    return allowance;
}

/// The least leaf for the musts, and for each wish in turn that can be had as well.
Choice chosen(const Patient& patient, Agenda agenda, double allowance,
              const std::atomic<bool>* cancel, Suggestion& suggestion)
{
    const auto tryGoals = [&](const std::vector<Goal>& goals) {
        const Guideline guideline(patient.tree, patient.foliation, mostLeaf(goals, allowance),
                                  cancel);
        auto choice = guideline.least(Targets(patient, goals));
        suggestion.nodes += choice.nodes;
        return choice;
    };
    Targets targets(patient, agenda.must);
    Choice choice;
    choice.found = true;
    choice.proven = true;
    if (!targets.reached())
        choice = tryGoals(agenda.must);
    suggestion.outcome = targets.reached() ? Outcome::nothingNeeded
                         : choice.found    ? Outcome::met
                                           : Outcome::notWithinGuideline;
    // For questions that ask much the same some dozens of times over: less depth for each.
    constexpr long kNodesForEach = 200'000;
    const Guideline brief(patient.tree, patient.foliation, mostLeaf(agenda.must, allowance), cancel,
                          kNodesForEach);
    if (!targets.reached())
        suggestion.leafShareWithoutGuideline = brief.leastWithoutAny(targets);
    if (!choice.found) {
        suggestion.binding = brief.binding(targets);
        return closest(brief, targets);
    }
    for (const auto& wish : agenda.wishes) {
        auto goals = agenda.must;
        goals.push_back(wish);
        auto more = tryGoals(goals);
        if (!more.found)
            continue;
        agenda.must = std::move(goals);
        choice = std::move(more);
        if (!choice.cuts.empty())
            suggestion.outcome = Outcome::met;
    }
    return choice;
}

Suggestion suggestCuts(const Patient& patient, const std::vector<Goal>& goals,
                       const std::atomic<bool>* cancel)
{
    const auto& [garden, tree, foliation, species, date, around] = patient;
    Suggestion suggestion;
    auto allowed = allowance(tree, species, date);
    suggestion.allowance = allowed.share;
    suggestion.allowanceReasons = std::move(allowed.reasons);
    suggestion.labour = whoForTree(tree);
    const auto choice =
        chosen(patient, agenda(patient, goals), suggestion.allowance, cancel, suggestion);
    describe(garden, tree, foliation, species, choice, suggestion);
    if (suggestion.cuts.empty())
        return suggestion;
    const auto calendar = calendarNotes(species, garden.place.latitude_deg, date);
    suggestion.notes.insert(suggestion.notes.end(), calendar.begin(), calendar.end());
    if (tree.protection == Protection::unknown)
        suggestion.notes.push_back(
            {Rule::protectedTree, Severity::inform, {}, std::nullopt, std::nullopt});
    return suggestion;
}

} // namespace

Suggestion suggest(const Garden& garden, const Tree& tree, const Foliation& foliation,
                   const Species& species, std::chrono::year_month_day date, const Aim& aim,
                   const std::atomic<bool>* cancel)
{
    const Garden raised = withSpare(garden, aim.spare_m);
    const Patient patient{raised, tree, foliation, species, date, aim.around};
    auto goals = tree.goals;
    goals.insert(goals.end(), aim.goals.begin(), aim.goals.end());
    auto suggestion = suggestCuts(patient, goals, cancel);
    const Tree standing = afterCuts(tree, cutsOf(suggestion));
    suggestion.spare_m = aim.spare_m;
    // Against the need, without spare.
    suggestion.before = headroomOf(garden, tree, foliation, species);
    suggestion.after = headroomOf(garden, standing, foliation, species);
    suggestion.goals = goalResults(patient, goals, standing, suggestion.leafShare);
    suggestion.shoots = growth::shootRate(tree, species, garden.place, suggestion.leafShare);
    suggestion.regrowth =
        growth::regrowth(garden, load::sagUnder(standing, foliation, species, load::kHeaviest).tree,
                         species, suggestion.shoots, date);
    return suggestion;
}

} // namespace model::advice
