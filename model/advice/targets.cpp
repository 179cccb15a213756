#include "model/advice/targets.hpp"

#include "model/load/sag.hpp"

#include <algorithm>

namespace model::advice {
namespace {

std::size_t plantingIndex(const Garden& garden, const std::string& id)
{
    return static_cast<std::size_t>(std::ranges::find(garden.plantings, id, &Planting::id) -
                                    garden.plantings.begin());
}

bool deadOrLost(const Tree& tree, const std::vector<bool>& lose)
{
    const auto dead = deadFrom_m(tree);
    const auto order = limbOrder(tree);
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb)
        if (limb != order.trunk && (dead[limb] || lose[limb]))
            return true;
    return false;
}

} // namespace

Targets::Targets(const Patient& patient, const std::vector<Goal>& goals)
    : patient_(patient),
      sagging_(
          load::sagUnder(patient.tree, patient.foliation, patient.species, load::kHeaviest).tree),
      now_(headroom::treeHeadroom(patient.garden, patient.tree, sagging_)),
      strips_(headroomGoals(patient.garden, patient.tree)), eased_(strips_),
      keep_(patient.tree.limbs.size()), lose_(patient.tree.limbs.size())
{
    for (std::size_t strip = 0; strip < now_.size(); ++strip)
        if (now_[strip].worstShortfall_m() > 0.0)
            lacking_.push_back(strip);
    readLimbs(goals);
    readLight(goals);
}

void Targets::readLimbs(const std::vector<Goal>& goals)
{
    const auto& tree = patient_.tree;
    std::vector<std::optional<double>> most(tree.limbs.size());
    for (const auto& goal : goals) {
        const auto limb = limbIndex(tree, goal.subject);
        if (goal.kind == GoalKind::keep)
            keep_[limb] = true;
        if (goal.kind == GoalKind::lose)
            lose_[limb] = true;
        if (goal.kind != GoalKind::relief)
            continue;
        for (std::size_t i = 0; i < most.size(); ++i)
            if (goal.subject.empty() || i == limb)
                most[i] =
                    std::min(most[i].value_or(goal.value.value_or(1.0)), goal.value.value_or(1.0));
    }
    if (std::ranges::any_of(most, [](const auto& m) { return m.has_value(); }))
        relief_.emplace(patient_.garden, tree, patient_.foliation, patient_.species,
                        std::move(most));
}

void Targets::readLight(const std::vector<Goal>& goals)
{
    if (!patient_.around)
        return;
    std::vector<LightWish> wishes;
    for (const auto& goal : goals) {
        if (goal.kind != GoalKind::light)
            continue;
        if (const auto sun_h = wantedSun_h(goal, patient_.garden, patient_.around->tables))
            wishes.push_back({plantingIndex(patient_.garden, goal.subject), *sun_h, goal.months});
    }
    if (!wishes.empty())
        light_.emplace(patient_.garden, patient_.tree, *patient_.around, patient_.date.year(),
                       wishes);
}

Ease Targets::whole() const
{
    return {std::vector<double>(strips_.size(), 1.0), 1.0, 1.0};
}

void Targets::ease(const Ease& ease)
{
    eased_ = strips_;
    for (const auto strip : lacking_)
        if (const auto height = now_[strip].worstHeight_m())
            eased_[strip].height_m = *height + ease.strips[strip] * now_[strip].worstShortfall_m();
    if (relief_)
        relief_->ease(ease.relief);
    if (light_)
        light_->ease(ease.light);
}

Wanted Targets::wanted() const
{
    Wanted wanted;
    wanted.headroom = eased_;
    wanted.sagging = &sagging_;
    wanted.keep = keep_;
    wanted.lose = lose_;
    wanted.goals = (relief_ ? relief_->count() : 0) + (light_ ? light_->count() : 0);
    if (wanted.goals > 0)
        wanted.help = [this](const Taken& taken) {
            auto all = relief_ ? relief_->help(taken) : std::vector<double>();
            const auto light = light_ ? light_->help(taken) : std::vector<double>();
            all.insert(all.end(), light.begin(), light.end());
            return all;
        };
    return wanted;
}

bool Targets::met(const Tree& cut) const
{
    return (!relief_ || relief_->met(cut)) && (!light_ || light_->met(cut));
}

void Targets::lookCloser(const LimbStates& states, const Allowed& allowed, double leafMost,
                         Reach& reach) const
{
    if (relief_)
        relief_->lookCloser(states, allowed, leafMost, reach);
    if (light_)
        light_->lookCloser(states, allowed, leafMost, relief_ ? relief_->count() : 0, reach);
}

bool Targets::reached() const
{
    return lacking_.empty() && !lacksRelief() && !lacksLight() && !deadOrLost(patient_.tree, lose_);
}

bool namesSomething(const Goal& goal, const Garden& garden, const Tree& tree)
{
    switch (goal.kind) {
    case GoalKind::relief:
        return goal.subject.empty() || limbIndex(tree, goal.subject) != kNoLimb;
    case GoalKind::keep:
    case GoalKind::lose:
        return limbIndex(tree, goal.subject) != kNoLimb;
    case GoalKind::light:
        return plantingIndex(garden, goal.subject) < garden.plantings.size();
    case GoalKind::leaf:
        break;
    }
    return true;
}

std::optional<double> wantedSun_h(const Goal& goal, const Garden& garden, const Tables& tables)
{
    if (goal.value)
        return goal.value;
    const auto* plant =
        findPlant(tables, garden.plantings[plantingIndex(garden, goal.subject)].plant);
    return plant ? plant->minSun_h : std::nullopt;
}

} // namespace model::advice
