#include "model/advice/targets.hpp"

#include "model/advice/cleaning.hpp"
#include "model/advice/fruit_wood.hpp"
#include "model/load/sag.hpp"

#include <algorithm>
#include <map>

namespace model::advice {
namespace {

std::size_t plantingIndex(const Garden& garden, const std::string& id)
{
    return static_cast<std::size_t>(std::ranges::find(garden.plantings, id, &Planting::id) -
                                    garden.plantings.begin());
}

bool faultyOrLost(const Tree& tree, const std::vector<bool>& keep, const std::vector<bool>& lose)
{
    const auto faulty = faultyFrom_m(tree);
    const auto order = limbOrder(tree);
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb)
        if (limb != order.trunk && ((faulty[limb] && !keep[limb]) || lose[limb]))
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
    readRelief(goals);
    readLight(goals);
}

void Targets::readLimbs(const std::vector<Goal>& goals)
{
    for (const auto& goal : goals) {
        const auto limb = limbIndex(patient_.tree, goal.subject);
        if (goal.kind == GoalKind::keep)
            keep_[limb] = true;
        if (goal.kind == GoalKind::lose)
            lose_[limb] = true;
        if (goal.kind == GoalKind::openCentre)
            for (const auto upright : middleLimbs(patient_.tree))
                lose_[upright] = true;
    }
}

void Targets::readRelief(const std::vector<Goal>& goals)
{
    const auto& tree = patient_.tree;
    std::map<std::optional<double>, std::vector<std::optional<double>>> byGust;
    for (const auto& goal : goals) {
        if (goal.kind != GoalKind::relief && goal.kind != GoalKind::gust)
            continue;
        const bool own = goal.kind == GoalKind::gust; // to bear it: all of its strength at most
        auto& most = byGust[own ? goal.value : std::nullopt];
        most.resize(tree.limbs.size());
        const double share = own ? 1.0 : goal.value.value_or(1.0);
        for (std::size_t i = 0; i < most.size(); ++i)
            if (goal.subject.empty() || tree.limbs[i].id == goal.subject)
                most[i] = std::min(most[i].value_or(share), share);
    }
    for (auto& [gust_m_s, most] : byGust)
        reliefs_.emplace_back(patient_.garden, tree, patient_.foliation, patient_.species,
                              std::move(most), gust_m_s);
}

void Targets::readLight(const std::vector<Goal>& goals)
{
    if (!patient_.around)
        return;
    std::vector<LightWish> wishes;
    for (const auto& goal : goals) {
        if (!isLight(goal))
            continue;
        if (const auto wanted = wantedLight(goal, patient_.garden, patient_.around->tables))
            wishes.push_back({plantingIndex(patient_.garden, goal.subject), *wanted, goal.months,
                              goal.kind == GoalKind::dli});
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
    for (auto& relief : reliefs_)
        relief.ease(ease.relief);
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
    wanted.shoots = shootCuts(patient_.species);
    wanted.goals = reliefCount() + (light_ ? light_->count() : 0);
    if (wanted.goals > 0)
        wanted.help = [this](const Taken& taken) {
            std::vector<double> all;
            const auto add = [&all](const std::vector<double>& more) {
                all.insert(all.end(), more.begin(), more.end());
            };
            for (const auto& relief : reliefs_)
                add(relief.help(taken));
            if (light_)
                add(light_->help(taken));
            return all;
        };
    return wanted;
}

bool Targets::met(const Tree& cut) const
{
    return std::ranges::all_of(reliefs_, [&](const auto& relief) { return relief.met(cut); }) &&
           (!light_ || light_->met(cut));
}

std::vector<double> Targets::missing(const Tree& cut, const LimbStates& states,
                                     const Picks& picks) const
{
    std::vector<double> all;
    const auto add = [&all](const std::vector<double>& more) {
        all.insert(all.end(), more.begin(), more.end());
    };
    for (const auto& relief : reliefs_)
        add(relief.missing(cut));
    if (light_)
        add(light_->missing(cut, states, picks));
    return all;
}

void Targets::lookCloser(const LimbStates& states, const Allowed& allowed, double leafMost,
                         const PerOption& likely, Reach& reach) const
{
    std::size_t first = 0;
    for (const auto& relief : reliefs_) {
        if (likely.empty()) // says nothing of relief
            relief.lookCloser(states, allowed, leafMost, first, reach);
        first += relief.count();
    }
    if (light_)
        light_->lookCloser(states, allowed, leafMost, likely, first, reach);
}

std::size_t Targets::reliefCount() const
{
    std::size_t count = 0;
    for (const auto& relief : reliefs_)
        count += relief.count();
    return count;
}

bool Targets::reached() const
{
    return lacking_.empty() && !lacksRelief() && !lacksLight() &&
           !faultyOrLost(patient_.tree, keep_, lose_);
}

bool namesSomething(const Goal& goal, const Garden& garden, const Tree& tree)
{
    switch (goal.kind) {
    case GoalKind::relief:
    case GoalKind::gust:
        return goal.subject.empty() || limbIndex(tree, goal.subject) != kNoLimb;
    case GoalKind::keep:
    case GoalKind::lose:
        return limbIndex(tree, goal.subject) != kNoLimb;
    case GoalKind::light:
    case GoalKind::dli:
        return plantingIndex(garden, goal.subject) < garden.plantings.size();
    case GoalKind::openCentre:
        return yearlyRenewal(tree.species).has_value();
    case GoalKind::leaf:
        break;
    }
    return true;
}

std::optional<double> wantedLight(const Goal& goal, const Garden& garden, const Tables& tables)
{
    if (goal.value)
        return goal.value;
    const auto* plant =
        findPlant(tables, garden.plantings[plantingIndex(garden, goal.subject)].plant);
    if (!plant)
        return std::nullopt;
    return goal.kind == GoalKind::dli ? plant->minDli_mol : plant->minSun_h;
}

} // namespace model::advice
