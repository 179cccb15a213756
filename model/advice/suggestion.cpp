#include "model/advice/suggestion.hpp"

#include "model/advice/allowance.hpp"
#include "model/advice/broken_rules.hpp"
#include "model/advice/chimney.hpp"
#include "model/advice/cleaning.hpp"
#include "model/advice/closest.hpp"
#include "model/advice/crown_shape.hpp"
#include "model/advice/cut_work.hpp"
#include "model/advice/fruit_wood.hpp"
#include "model/advice/goal_results.hpp"
#include "model/advice/guideline.hpp"
#include "model/advice/headroom_goal.hpp"
#include "model/advice/limb_faults.hpp"
#include "model/advice/prune.hpp"
#include "model/advice/spared_tails.hpp"
#include "model/advice/who.hpp"
#include "model/advice/work_order.hpp"
#include "model/load/sag.hpp"

#include <algorithm>

namespace model::advice {
namespace {

std::vector<headroom::StripHeadroom> headroomOf(const Garden& garden, const Tree& tree,
                                                const Foliation& foliation, const Species& species)
{
    return headroom::treeHeadroom(garden, tree,
                                  load::sagUnder(tree, foliation, species, load::kHeaviest).tree);
}

/// The cuts in working order, with their weights: what cleans first.
void describe(const Patient& patient, const std::vector<Cut>& cleaning, const Choice& choice,
              Suggestion& suggestion)
{
    const auto& [garden, tree, foliation, species, date, around] = patient;
    suggestion.proven = choice.proven;
    suggestion.leafBound = choice.bound;
    suggestion.nodes += choice.nodes;
    Tree standing = tree;
    const auto make = [&](const std::vector<Cut>& cuts, bool cleans) {
        const auto ordered = inWorkingOrder(standing, cuts);
        const auto spared = sparedTails(standing, foliation, ordered);
        for (std::size_t i = 0; i < ordered.size(); ++i) {
            const auto& cut = ordered[i];
            auto planned = plannedCut(garden, standing, cut, foliation, species);
            planned.cleans = cleans;
            if (cleans) { // not counted, and there is nothing to shorten instead
                planned.fault = faultOf(tree.limbs[limbIndex(tree, cut.limb)]);
                planned.leafShare = 0.0;
                std::erase_if(planned.notes, [](const Finding& note) {
                    return note.rule == Rule::branchToStem || note.rule == Rule::limbShare;
                });
            } else {
                planned.notes.insert(planned.notes.end(), spared[i].begin(), spared[i].end());
            }
            suggestion.leafShare += planned.leafShare;
            suggestion.debris = suggestion.debris + debrisOf(planned.pieces);
            suggestion.labour = together(suggestion.labour, planned.labour);
            suggestion.cuts.push_back(std::move(planned));
            standing = afterCut(standing, cut);
        }
    };
    make(cleaning, true);
    const Tree cleaned = standing;
    make(choice.cuts, false);
    if (!choice.cuts.empty())
        suggestion.notes = crownNotes(crownShape(cleaned, foliation),
                                      crownShape(standing, foliation), suggestion.leafShare);
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
    const Effort kBrief{.nodes = 500, .asked = 60, .measures = choice.found ? 0 : 600};
    const Guideline brief(patient.tree, patient.foliation, mostLeaf(agenda.must, allowance), cancel,
                          kBrief);
    if (!targets.reached()) {
        const auto free = brief.leastWithoutAny(targets);
        if (free.found) {
            suggestion.leafShareWithoutGuideline = free.leaf;
            suggestion.leafBoundWithoutGuideline = free.bound;
        }
    }
    if (!choice.found) {
        suggestion.refuted = choice.proven;
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
void addCuts(const Patient& patient, const std::vector<Cut>& cleaning, const Choice& choice,
             Suggestion& suggestion)
{
    const auto& [garden, tree, foliation, species, date, around] = patient;
    suggestion.labour = whoForTree(tree);
    describe(patient, cleaning, choice, suggestion);
    const Tree standing = afterCuts(tree, cutsOf(suggestion));
    const auto add = [&](const auto& notes) {
        suggestion.notes.insert(suggestion.notes.end(), notes.begin(), notes.end());
    };
    add(rubbingNotes(standing));
    add(chimneyNotes(garden, standing));
    if (suggestion.cuts.empty())
        return;
    if (const auto renewal = renewalNote(species))
        suggestion.notes.push_back(*renewal);
    add(calendarNotes(species, garden.place.latitude_deg, date));
    if (const auto wilt = oakWiltNote(species, garden.place, date))
        suggestion.notes.push_back(*wilt);
    if (tree.protection == Protection::unknown)
        suggestion.notes.push_back(
            {Rule::protectedTree, Severity::block, {}, std::nullopt, std::nullopt});
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

std::vector<Cut> cleaningOf(const Tree& tree, const std::vector<Goal>& goals)
{
    std::vector<std::string> keep;
    for (const auto& goal : goals)
        if (goal.kind == GoalKind::keep)
            keep.push_back(goal.subject);
    return cleaningCuts(tree, keep);
}

Suggestion suggest(const Garden& garden, const Tree& tree, const Foliation& foliation,
                   const Species& species, std::chrono::year_month_day date, const Aim& aim,
                   const std::atomic<bool>* cancel, const Progress& progress)
{
    const Garden raised = withSpare(garden, aim.spare_m);
    const Patient patient{raised, tree, foliation, species, date, aim.around};
    const auto goals = goalsOf(tree, aim);
    const auto cleaning = cleaningOf(tree, goals);
    const Tree cleaned = afterCuts(tree, cleaning);
    const Patient clean{raised, cleaned, foliation, species, date, aim.around};
    Suggestion suggestion;
    suggestion.spare_m = aim.spare_m;
    addAllowance(patient, suggestion);
    const auto choice =
        chosen(clean, agenda(clean, goals), suggestion.allowance, cancel, progress, suggestion);
    if (!cleaning.empty() && suggestion.outcome == Outcome::nothingNeeded)
        suggestion.outcome = Outcome::met;
    addCuts(patient, cleaning, choice, suggestion);
    addAftermath(garden, patient, goals, suggestion);
    return suggestion;
}

Suggestion judge(const Garden& garden, const Tree& tree, const Foliation& foliation,
                 const Species& species, std::chrono::year_month_day date,
                 const std::vector<Cut>& cuts, const Aim& aim)
{
    const Garden raised = withSpare(garden, aim.spare_m);
    const Patient patient{raised, tree, foliation, species, date, aim.around};
    const auto goals = goalsOf(tree, aim);
    Suggestion suggestion;
    suggestion.spare_m = aim.spare_m;
    addAllowance(patient, suggestion);
    std::vector<Cut> cleaning;
    std::vector<Cut> others;
    const auto cleans = cleaningOf(tree, goals);
    for (const auto& cut : cuts)
        (std::ranges::find(cleans, cut) != cleans.end() ? cleaning : others).push_back(cut);
    cleaning = madeInTurn(tree, cleaning);
    const Tree cleaned = afterCuts(tree, cleaning);
    Choice choice;
    choice.cuts = madeInTurn(cleaned, others);
    suggestion.binding =
        brokenRules(cleaned, foliation, species, suggestion.allowance, choice.cuts);
    addCuts(patient, cleaning, choice, suggestion);
    addAftermath(garden, patient, goals, suggestion);
    suggestion.outcome = suggestion.binding.empty() && reachesAll(suggestion)
                             ? Outcome::met
                             : Outcome::notWithinGuideline;
    return suggestion;
}

} // namespace model::advice
