#include "model/advice/stages.hpp"

#include "model/advice/allowance.hpp"
#include "model/advice/broken_rules.hpp"
#include "model/advice/cut_work.hpp"
#include "model/advice/goal_results.hpp"
#include "model/advice/guideline.hpp"
#include "model/advice/headroom_goal.hpp"
#include "model/advice/prune.hpp"
#include "model/growth/grown.hpp"
#include "model/growth/shoot_season.hpp"

#include <algorithm>
#include <utility>

namespace model::advice {
namespace {

using std::chrono::sys_days;
using std::chrono::year_month_day;

constexpr std::size_t kVisitsMost = 4; // a plan for longer than that is no plan
constexpr double kLittle = 0.005;      // a visit that takes less leaf is none

/// The tree as it stands on the next visit, this one in its diary.
Tree until(const Garden& garden, const Tree& tree, const Species& species, const Stage& visit,
           year_month_day next)
{
    const auto pattern = species.practice.shootPattern;
    const double years =
        growth::growthClock(pattern, garden.place, sys_days{next}, tree.leafDates) -
        growth::growthClock(pattern, garden.place, sys_days{visit.date}, tree.leafDates);
    Tree later = growth::grown(afterCuts(tree, cutsOf(visit.suggestion)),
                               years * visit.suggestion.shoots.mean_m);
    Visit written;
    written.id = "stage " + std::to_string(later.visits.size());
    written.date = visit.date;
    written.cuts = cutsOf(visit.suggestion);
    written.leafShare = visit.suggestion.leafShare;
    later.visits.push_back(std::move(written));
    return later;
}

/// What must be reached, of the tree's goals and the aim's.
std::vector<Goal> mustsOf(const Patient& patient, const Aim& aim)
{
    auto goals = goalsOf(patient.tree, aim);
    std::erase_if(goals, [&](const Goal& goal) {
        return goal.want != Want::must || !canBeAsked(goal, patient);
    });
    return goals;
}

Garden with(const Garden& garden, const Tree& tree)
{
    Garden later = garden;
    *std::ranges::find(later.trees, tree.id, &Tree::id) = tree;
    return later;
}

/// The largest of the cuts that one visit may make together, in the order in which they came.
std::vector<Cut> asFarAsAllowed(const Patient& patient, const std::vector<Cut>& cuts,
                                double allowed)
{
    const auto& [garden, tree, foliation, species, date, around] = patient;
    std::vector<std::pair<double, std::size_t>> largestFirst;
    for (std::size_t i = 0; i < cuts.size(); ++i)
        largestFirst.emplace_back(-plannedCut(garden, tree, cuts[i], foliation, species).leafShare,
                                  i);
    std::ranges::sort(largestFirst);
    std::vector<bool> taken(cuts.size());
    const auto chosen = [&] {
        std::vector<Cut> some;
        for (std::size_t i = 0; i < cuts.size(); ++i)
            if (taken[i])
                some.push_back(cuts[i]);
        return some;
    };
    for (const auto& largest : largestFirst) {
        taken[largest.second] = true;
        if (!brokenRules(tree, foliation, species, allowed, chosen()).empty())
            taken[largest.second] = false;
    }
    return chosen();
}

/// What one visit does, once the tree is cleaned.
Suggestion visitOf(const Patient& patient, const Aim& aim, const std::atomic<bool>* cancel)
{
    const auto& [garden, tree, foliation, species, date, around] = patient;
    const double allowed = allowance(tree, species, date).share;
    const Garden raised = withSpare(garden, aim.spare_m);
    auto cuts = cleaningOf(tree, goalsOf(tree, aim));
    const Tree cleaned = afterCuts(tree, cuts);
    const Patient asked{raised, cleaned, foliation, species, date, around};
    const Targets targets(asked, mustsOf(asked, aim));
    const Effort kEffort{.nodes = 2'000, .asked = 150};
    const Guideline guideline(cleaned, foliation, allowed, cancel, kEffort);
    auto choice = guideline.least(targets);
    if (!choice.found)
        choice.cuts = asFarAsAllowed(
            {garden, cleaned, foliation, species, date, around},
            guideline.least(targets, {Rule::seasonShare, Rule::woundSum}).cuts, allowed);
    cuts.insert(cuts.end(), choice.cuts.begin(), choice.cuts.end());
    return judge(garden, tree, foliation, species, date, cuts, aim);
}

/// The leaf that the goals ask for at the least can't be had in fewer visits.
bool isFewest(const Stages& stages, const Suggestion& first)
{
    double most = 0.0;
    for (std::size_t i = 0; i + 1 < stages.visits.size(); ++i)
        most += stages.visits[i].suggestion.allowance;
    return stages.reached && first.leafBoundWithoutGuideline &&
           most < *first.leafBoundWithoutGuideline;
}

} // namespace

year_month_day nextVisit(const Species& species, double latitude_deg, year_month_day from)
{
    const auto& best = species.practice.bestMonthsNorth;
    const auto& avoid = species.practice.avoidMonthsNorth;
    const auto isGood = [&](std::chrono::month month) {
        const int north = northernMonth(month, latitude_deg);
        return best.empty() ? std::ranges::find(avoid, north) == avoid.end()
                            : std::ranges::find(best, north) != best.end();
    };
    auto earliest = from + std::chrono::years{1};
    if (!earliest.ok()) // 29 February
        earliest = earliest.year() / 3 / 1;
    if (isGood(earliest.month()))
        return earliest;
    for (int months = 1; months < 12; ++months) {
        const auto then = earliest.year() / earliest.month() / 1 + std::chrono::months{months};
        if (isGood(then.month()))
            return then;
    }
    return earliest;
}

Stages stages(const Garden& garden, const Tree& tree, const Foliation& foliation,
              const Species& species, const Suggestion& first, year_month_day date, const Aim& aim,
              const std::atomic<bool>* cancel)
{
    Stages stages;
    if (first.outcome != Outcome::notWithinGuideline)
        return stages;
    Tree standing = tree;
    while (stages.visits.size() < kVisitsMost && !stages.reached) {
        if (cancel && cancel->load(std::memory_order_relaxed))
            return stages;
        auto next = date;
        if (!stages.visits.empty()) {
            const auto& last = stages.visits.back();
            next = nextVisit(species, garden.place.latitude_deg, last.date);
            standing = until(garden, standing, species, last, next);
        }
        const Garden then = with(garden, standing);
        auto visit = visitOf({then, standing, foliation, species, next, aim.around}, aim, cancel);
        if (visit.leafShare < kLittle)
            break;
        stages.reached = visit.outcome == Outcome::met;
        stages.visits.push_back({next, std::move(visit)});
    }
    if (stages.visits.size() < 2)
        return {};
    stages.fewest = isFewest(stages, first);
    return stages;
}

} // namespace model::advice
