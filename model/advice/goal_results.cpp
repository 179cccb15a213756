#include "model/advice/goal_results.hpp"

#include <algorithm>

namespace model::advice {
namespace {

constexpr double kNearlyMet = 1e-6;

load::TreeLoad inStorm(const Patient& patient, const Tree& tree)
{
    load::Conditions conditions;
    conditions.gust_m_s = patient.garden.designGust_m_s;
    return load::treeLoad(tree, patient.foliation, patient.species, patient.garden.place,
                          patient.garden.exposure, conditions);
}

/// The limb with the greatest utilisation among those asked about; nothing if none has strength.
const load::LimbLoad* worst(const load::TreeLoad& loads, const Tree& tree, const Goal& goal)
{
    const load::LimbLoad* found = nullptr;
    for (const auto& limb : loads.limbs) {
        const bool asked = goal.subject.empty() || tree.limbs[limb.limb].id == goal.subject;
        if (asked && limb.hasStrength && (!found || limb.utilisation > found->utilisation))
            found = &limb;
    }
    return found;
}

void measureRelief(const Patient& patient, const Tree& standing, GoalResult& result)
{
    const auto before = inStorm(patient, patient.tree);
    const auto after = inStorm(patient, standing);
    result.wanted = result.goal.value.value_or(1.0);
    if (const auto* limb = worst(before, patient.tree, result.goal)) {
        result.before = limb->utilisation;
        result.worstLimb = patient.tree.limbs[limb->limb].id;
    }
    if (const auto* limb = worst(after, standing, result.goal))
        result.after = limb->utilisation;
    if (result.after && *result.after > *result.wanted + kNearlyMet)
        result.state = GoalResult::State::missed;
}

void measureLight(const Patient& patient, const Tree& standing, GoalResult& result)
{
    result.wanted = wantedSun_h(result.goal, patient.garden, patient.around->tables);
    const auto planting = static_cast<std::size_t>(
        std::ranges::find(patient.garden.plantings, result.goal.subject, &Planting::id) -
        patient.garden.plantings.begin());
    const LightGoals light(patient.garden, patient.tree, *patient.around, patient.date.year(),
                           {{planting, *result.wanted, result.goal.months}});
    result.before = light.now_h().front();
    result.after = light.hours(standing).front();
    result.atBest = light.without_h().front();
    if (*result.after < *result.wanted - kNearlyMet)
        result.state = GoalResult::State::missed;
}

void measureLimb(const Patient& patient, const Tree& standing, GoalResult& result)
{
    const auto& tree = patient.tree;
    const auto after = limbIndex(standing, result.goal.subject);
    const bool there = after != kNoLimb;
    const bool whole = there && length_m(standing.limbs[after]) ==
                                    length_m(tree.limbs[limbIndex(tree, result.goal.subject)]);
    if (result.goal.kind == GoalKind::keep ? !whole : there)
        result.state = GoalResult::State::missed;
}

} // namespace

bool canBeAsked(const Goal& goal, const Patient& patient)
{
    if (!namesSomething(goal, patient.garden, patient.tree))
        return false;
    return goal.kind != GoalKind::light ||
           (patient.around && wantedSun_h(goal, patient.garden, patient.around->tables));
}

std::vector<GoalResult> goalResults(const Patient& patient, const std::vector<Goal>& goals,
                                    const Tree& standing, double leafShare)
{
    std::vector<GoalResult> all;
    for (const auto& goal : goals) {
        GoalResult result;
        result.goal = goal;
        if (!canBeAsked(goal, patient)) {
            result.state = GoalResult::State::leftAside;
        } else if (goal.kind == GoalKind::relief) {
            measureRelief(patient, standing, result);
        } else if (goal.kind == GoalKind::light) {
            measureLight(patient, standing, result);
        } else if (goal.kind == GoalKind::leaf) {
            result.wanted = goal.value;
            result.after = leafShare;
            if (leafShare > *goal.value + kNearlyMet)
                result.state = GoalResult::State::missed;
        } else {
            measureLimb(patient, standing, result);
        }
        if (result.state == GoalResult::State::missed && goal.want == Want::wish)
            result.state = GoalResult::State::givenUp;
        all.push_back(std::move(result));
    }
    return all;
}

} // namespace model::advice
