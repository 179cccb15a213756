#include "model/advice/goal_results.hpp"

#include "model/advice/fruit_wood.hpp"
#include "model/growth/grown.hpp"
#include "model/load/breaking_gust.hpp"

#include <algorithm>
#include <limits>

namespace model::advice {
namespace {

constexpr double kNearlyMet = 1e-6;

load::TreeLoad inStorm(const Patient& patient, const Tree& tree,
                       std::optional<double> gust_m_s = {})
{
    load::Conditions conditions;
    conditions.gust_m_s = gust_m_s.value_or(patient.garden.designGust_m_s);
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

/// The gust in which the first of the limbs asked about is expected to break, with every unknown at
/// its middle (L22); blank: no limb that could.
std::optional<double> firstBreak_m_s(const Patient& patient, const Tree& tree, const Goal& goal,
                                     std::string* limb = nullptr)
{
    load::Conditions conditions;
    conditions.gust_m_s = load::kReferenceGust_m_s;
    const auto load = load::loadCase(tree, patient.foliation, patient.species, patient.garden.place,
                                     patient.garden.exposure, conditions);
    const load::BreakingLimbs limbs(tree, load, patient.species, patient.garden.exposure);
    std::optional<double> first;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        if (!goal.subject.empty() && tree.limbs[i].id != goal.subject)
            continue;
        const auto middle = limbs.middle(i);
        if (!middle.at.hasStrength)
            continue;
        const double gust = middle.breaks ? std::min(middle.gust_m_s, load::kGreatestGust_m_s)
                                          : load::kGreatestGust_m_s;
        if (!first || gust < *first) {
            first = gust;
            if (limb)
                *limb = tree.limbs[i].id;
        }
    }
    return first;
}

void measureGust(const Patient& patient, const Tree& standing, GoalResult& result)
{
    result.wanted = result.goal.value;
    result.before = firstBreak_m_s(patient, patient.tree, result.goal, &result.worstLimb);
    result.after = firstBreak_m_s(patient, standing, result.goal);
    const auto after = inStorm(patient, standing, result.goal.value);
    if (const auto* limb = worst(after, standing, result.goal);
        limb && limb->utilisation > 1.0 + kNearlyMet)
        result.state = GoalResult::State::missed;
}

/// How long shoots may grow before a planting has less light than is wanted, m; infinite: for as
/// long as anybody plans (A16).
double shootThatShades_m(const LightGoals& light, const Tree& standing, double wanted)
{
    constexpr double kFarthest_m = 16.0;
    constexpr int kHalves = 10; // to 2 cm
    const auto holds = [&](double shoot_m) {
        return light.light(growth::grown(standing, shoot_m)).front() >=
               enoughLight(wanted) - kNearlyMet;
    };
    if (holds(kFarthest_m))
        return std::numeric_limits<double>::infinity();
    double low = 0.0;
    double high = kFarthest_m;
    for (int i = 0; i < kHalves; ++i) {
        const double middle = (low + high) / 2.0;
        (holds(middle) ? low : high) = middle;
    }
    return low;
}

void measureLight(const Patient& patient, const Tree& standing, double leafShare,
                  GoalResult& result)
{
    result.wanted = wantedLight(result.goal, patient.garden, patient.around->tables);
    const auto planting = static_cast<std::size_t>(
        std::ranges::find(patient.garden.plantings, result.goal.subject, &Planting::id) -
        patient.garden.plantings.begin());
    const LightGoals light(
        patient.garden, patient.tree, *patient.around, patient.date.year(),
        {{planting, *result.wanted, result.goal.months, result.goal.kind == GoalKind::dli}});
    result.before = light.now().front();
    result.after = light.light(standing).front();
    result.atBest = light.without().front();
    if (*result.after < enoughLight(*result.wanted) - kNearlyMet) {
        result.state = GoalResult::State::missed;
        return;
    }
    const auto rate =
        growth::shootRate(patient.tree, patient.species, patient.garden.place, leafShare);
    result.lost = growth::grownOn(shootThatShades_m(light, standing, *result.wanted), rate,
                                  patient.species.practice.shootPattern, patient.garden.place,
                                  patient.date, patient.tree.leafDates);
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

void measureMiddle(const Patient& patient, const Tree& standing, GoalResult& result)
{
    result.wanted = 0.0;
    result.before = static_cast<double>(middleLimbs(patient.tree).size());
    double left = 0.0;
    for (const auto limb : middleLimbs(patient.tree))
        left += limbIndex(standing, patient.tree.limbs[limb].id) != kNoLimb ? 1.0 : 0.0;
    result.after = left;
    if (left > 0.0)
        result.state = GoalResult::State::missed;
}

} // namespace

bool canBeAsked(const Goal& goal, const Patient& patient)
{
    if (!namesSomething(goal, patient.garden, patient.tree))
        return false;
    return !Targets::isLight(goal) ||
           (patient.around && wantedLight(goal, patient.garden, patient.around->tables));
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
        } else if (goal.kind == GoalKind::gust) {
            measureGust(patient, standing, result);
        } else if (Targets::isLight(goal)) {
            measureLight(patient, standing, leafShare, result);
        } else if (goal.kind == GoalKind::openCentre) {
            measureMiddle(patient, standing, result);
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
