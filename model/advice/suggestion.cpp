#include "model/advice/suggestion.hpp"

#include "model/advice/allowance.hpp"
#include "model/advice/broken_rules.hpp"
#include "model/advice/closest.hpp"
#include "model/advice/crown_shape.hpp"
#include "model/advice/cut_work.hpp"
#include "model/advice/fruit_wood.hpp"
#include "model/advice/goal_results.hpp"
#include "model/advice/guideline.hpp"
#include "model/advice/headroom_goal.hpp"
#include "model/advice/limb_faults.hpp"
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
    if (const double moved = movedAside(before, after); moved > kMovedAside)
        notes.push_back({Rule::balance, Severity::warn, {}, moved, kMovedAside});
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
    suggestion.leafBound = choice.bound;
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

/// Where a search gave up before it came upon any cuts: cuts that relieve limbs of more than was
/// asked do what was asked too, and may be easier to come upon. They are not proven the least.
Choice askingMore(const Guideline& guideline, Targets& targets, const Choice& gaveUp)
{
    for (const double share : {1.1, 1.25, 1.5}) { // of the way from what is to what is wanted
        Ease more = targets.whole();
        more.relief = share;
        targets.ease(more);
        auto choice = guideline.least(targets);
        if (!choice.found)
            continue;
        choice.proven = false;
        choice.bound = std::min(gaveUp.bound, choice.leaf);
        return choice;
    }
    return gaveUp;
}

/// The least leaf for the musts, and for each wish in turn that can be had as well.
Choice chosen(const Patient& patient, Agenda agenda, double allowance,
              const std::atomic<bool>* cancel, const Progress& progress, Suggestion& suggestion)
{
    Effort effort;
    effort.progress = progress;
    const auto tryGoals = [&](const std::vector<Goal>& goals) {
        const Guideline guideline(patient.tree, patient.foliation, mostLeaf(goals, allowance),
                                  cancel, effort);
        Targets targets(patient, goals);
        auto choice = guideline.least(targets);
        suggestion.nodes += choice.nodes;
        return choice.found || choice.proven ? choice : askingMore(guideline, targets, choice);
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
    const Effort kBrief{.nodes = 500, .asked = 60};
    const Guideline brief(patient.tree, patient.foliation, mostLeaf(agenda.must, allowance), cancel,
                          kBrief);
    if (!targets.reached()) {
        const auto free = brief.leastWithoutAny(targets);
        suggestion.leafShareWithoutGuideline = free.leaf;
        suggestion.leafBoundWithoutGuideline = free.found ? free.bound : 0.0;
    }
    if (!choice.found) {
        suggestion.binding = brief.binding(targets);
        return closest(brief, targets).choice;
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

void addAllowance(const Patient& patient, Suggestion& suggestion)
{
    auto allowed = allowance(patient.tree, patient.species, patient.date);
    suggestion.allowance = allowed.share;
    suggestion.allowanceReasons = std::move(allowed.reasons);
}

/// Weights, notes and who does it.
void addCuts(const Patient& patient, const Choice& choice, Suggestion& suggestion)
{
    const auto& [garden, tree, foliation, species, date, around] = patient;
    suggestion.labour = whoForTree(tree);
    describe(garden, tree, foliation, species, choice, suggestion);
    const auto faults = limbFaults(tree, afterCuts(tree, choice.cuts), foliation);
    suggestion.notes.insert(suggestion.notes.end(), faults.begin(), faults.end());
    if (suggestion.cuts.empty())
        return;
    if (const auto renewal = renewalNote(species))
        suggestion.notes.push_back(*renewal);
    const auto calendar = calendarNotes(species, garden.place.latitude_deg, date);
    suggestion.notes.insert(suggestion.notes.end(), calendar.begin(), calendar.end());
    if (tree.protection == Protection::unknown)
        suggestion.notes.push_back(
            {Rule::protectedTree, Severity::inform, {}, std::nullopt, std::nullopt});
}

/// What is left when the cuts are made. \param garden  without spare headroom
void addAftermath(const Garden& garden, const Patient& patient, const std::vector<Goal>& goals,
                  Suggestion& suggestion)
{
    const auto& [raised, tree, foliation, species, date, around] = patient;
    const Tree standing = afterCuts(tree, cutsOf(suggestion));
    suggestion.before = headroomOf(garden, tree, foliation, species);
    suggestion.after = headroomOf(garden, standing, foliation, species);
    suggestion.goals = goalResults(patient, goals, standing, suggestion.leafShare);
    suggestion.shoots = growth::shootRate(tree, species, garden.place, suggestion.leafShare);
    suggestion.regrowth =
        growth::regrowth(garden, load::sagUnder(standing, foliation, species, load::kHeaviest).tree,
                         species, suggestion.shoots, date);
}

bool reachesAll(const Suggestion& suggestion)
{
    return std::ranges::all_of(suggestion.after,
                               [&](const auto& strip) {
                                   const auto height = strip.worstHeight_m();
                                   return !height ||
                                          *height >= strip.needed_m + suggestion.spare_m - 1e-4;
                               }) &&
           std::ranges::none_of(suggestion.goals, [](const GoalResult& goal) {
               return goal.state == GoalResult::State::missed;
           });
}

} // namespace

std::vector<Cut> cutsOf(const Suggestion& suggestion)
{
    std::vector<Cut> cuts;
    for (const auto& planned : suggestion.cuts)
        cuts.push_back(planned.cut);
    return cuts;
}

std::vector<Goal> goalsOf(const Tree& tree, const Aim& aim)
{
    auto goals = tree.goals;
    goals.insert(goals.end(), aim.goals.begin(), aim.goals.end());
    return goals;
}

Suggestion suggest(const Garden& garden, const Tree& tree, const Foliation& foliation,
                   const Species& species, std::chrono::year_month_day date, const Aim& aim,
                   const std::atomic<bool>* cancel, const Progress& progress)
{
    const Garden raised = withSpare(garden, aim.spare_m);
    const Patient patient{raised, tree, foliation, species, date, aim.around};
    const auto goals = goalsOf(tree, aim);
    Suggestion suggestion;
    suggestion.spare_m = aim.spare_m;
    addAllowance(patient, suggestion);
    const auto choice =
        chosen(patient, agenda(patient, goals), suggestion.allowance, cancel, progress, suggestion);
    addCuts(patient, choice, suggestion);
    addAftermath(garden, patient, goals, suggestion);
    return suggestion;
}

Suggestion judge(const Garden& garden, const Tree& tree, const Foliation& foliation,
                 const Species& species, std::chrono::year_month_day date,
                 const std::vector<Cut>& cuts, const Aim& aim)
{
    const Garden raised = withSpare(garden, aim.spare_m);
    const Patient patient{raised, tree, foliation, species, date, aim.around};
    Suggestion suggestion;
    suggestion.spare_m = aim.spare_m;
    addAllowance(patient, suggestion);
    Choice choice;
    choice.cuts = madeInTurn(tree, cuts);
    suggestion.binding = brokenRules(tree, foliation, suggestion.allowance, choice.cuts);
    addCuts(patient, choice, suggestion);
    addAftermath(garden, patient, goalsOf(tree, aim), suggestion);
    suggestion.outcome = suggestion.binding.empty() && reachesAll(suggestion)
                             ? Outcome::met
                             : Outcome::notWithinGuideline;
    return suggestion;
}

} // namespace model::advice
