#include "model/advice/light_goals.hpp"

#include "model/advice/limb_part.hpp"
#include "model/advice/prune.hpp"

#include <algorithm>

namespace model::advice {
namespace {

constexpr double kRounding = 1e-6;
constexpr double kFloat = 2e-5; // the study's own rounding (LightGoals.* tests)

/// Coarser than the light that is reported, and the same for every set of cuts: a tenth of the
/// rays, within 3 % of the hours (docs/methods/advice.md, A6).
constexpr std::chrono::minutes kStep{20};
constexpr int kDaysPerMonth = 1;
constexpr int kSkyDirections = 60; // for light from the sky

std::vector<light::SampleDay> daysOf(const LightWish& wish, const Place& place,
                                     std::chrono::year year)
{
    if (wish.months.empty())
        return light::daysOfGrowingSeason(place, year, kDaysPerMonth);
    std::vector<light::SampleDay> days;
    for (const int month : wish.months)
        for (auto day : light::daysOfMonth(year / month, kDaysPerMonth)) {
            day.weight /= static_cast<double>(wish.months.size());
            days.push_back(day);
        }
    return days;
}

} // namespace

LightGoals::LightGoals(const Garden& garden, const Tree& tree, const Surroundings& around,
                       std::chrono::year year, const std::vector<LightWish>& wishes)
    : tree_(tree)
{
    const auto index = static_cast<std::size_t>(
        std::ranges::find(garden.trees, tree.id, &Tree::id) - garden.trees.begin());
    const auto trunk = limbOrder(tree).trunk;
    bareTrunk_ = tree;
    bareTrunk_.limbs = {tree.limbs[trunk]};
    bareTrunk_.limbs[0].foliage.reset();
    for (const auto& wish : wishes) {
        light::StudyQuestion question;
        question.days = daysOf(wish, garden.place, year);
        question.step = kStep;
        question.skyDirections = wish.moles ? kSkyDirections : 0;
        if (wish.moles)
            question.weather = light::weatherAt(garden.place);
        studies_.emplace_back(garden, around.foliations, around.tables, index,
                              std::vector{light::levelSurface(garden.plantings[wish.planting])},
                              question);
        moles_.push_back(wish.moles ? 1 : 0);
        wanted_.push_back(enoughLight(wish.wanted));
        without_.push_back(amount(moles_.size() - 1, studies_.back().without()));
    }
    now_ = light(tree);
    bare_ = light(bareTrunk_);
    ease(1.0);
}

void LightGoals::ease(double share)
{
    most_.clear();
    lacking_.clear();
    for (std::size_t i = 0; i < studies_.size(); ++i) {
        most_.push_back(
            std::min(wanted_[i], now_[i] + share * std::max(0.0, wanted_[i] - now_[i])));
        if (now_[i] < most_[i] - kRounding)
            lacking_.push_back(i);
    }
}

double LightGoals::amount(std::size_t wish, const std::vector<light::SurfaceDay>& days) const
{
    return moles_[wish] != 0 ? days.front().mean.dli_mol : days.front().mean.sun_h;
}

std::vector<double> LightGoals::light(const Tree& tree) const
{
    std::vector<double> all;
    for (std::size_t wish = 0; wish < studies_.size(); ++wish)
        all.push_back(amount(wish, studies_[wish].with(tree)));
    return all;
}

/// The part by itself on the bare stem.
Tree LightGoals::standingAlone(const Taken& taken) const
{
    Tree alone = bareTrunk_;
    const auto& limb = tree_.limbs[taken.limb];
    Limb part = limbPart(limb, taken.from_m, length_m(limb));
    if (!limb.parent) {
        alone.limbs[0] = std::move(part);
        return alone;
    }
    part.parent = alone.limbs[0].id;
    alone.limbs.push_back(std::move(part));
    return alone;
}

const std::vector<double>& LightGoals::takenAlone(std::size_t limb, double from_m) const
{
    auto [known, isNew] = alone_.try_emplace({limb, from_m});
    if (isNew) {
        const Tree alone = standingAlone({limb, from_m, 1.0});
        const auto shaded = light(alone);
        for (std::size_t i = 0; i < shaded.size(); ++i)
            known->second.push_back(std::max(0.0, bare_[i] - shaded[i]));
    }
    return known->second;
}

std::vector<double> LightGoals::help(const Taken& taken) const
{
    std::vector<double> all;
    if (lacking_.empty())
        return all;
    const auto& alone = takenAlone(taken.limb, taken.from_m);
    for (const auto i : lacking_)
        all.push_back(taken.share * alone[i] / (most_[i] - now_[i]));
    return all;
}

const std::vector<LightReach>& LightGoals::reaches(const LimbForms& forms) const
{
    if (forms_ != forms) {
        forms_ = forms;
        reaches_.clear();
        for (std::size_t wish = 0; wish < studies_.size(); ++wish)
            reaches_.emplace_back(studies_[wish], tree_, forms,
                                  [moles = moles_[wish] != 0](const light::StudyRay& ray) {
                                      return moles ? ray.worth.dli_mol : ray.worth.sun_h;
                                  });
    }
    return reaches_;
}

void LightGoals::lookCloser(const LimbStates& states, const Allowed& allowed, double leafMost,
                            const PerOption& likely, std::size_t first, Reach& reach) const
{
    if (lacking_.empty())
        return;
    const auto& all = reaches(states.forms());
    const auto lost = states.shareLost(likely);
    for (const auto i : lacking_) {
        auto most = all[i].most(states, allowed, leafMost, lost);
        const double whole = most_[i] - now_[i];
        reach.asked[first] = (most_[i] - kFloat * most_[i] - most.sure) / whole;
        for (double& more : most.more)
            more /= whole;
        reach.helps[first++] = std::move(most.more);
    }
}

bool LightGoals::met(const Tree& cut) const
{
    return std::ranges::all_of(lacking_, [&](std::size_t i) {
        return amount(i, studies_[i].with(cut)) >= most_[i] - kRounding;
    });
}

std::vector<double> LightGoals::missing(const Tree& cut, const LimbStates& states,
                                        const Picks& picks) const
{
    const auto after = states.after(picks);
    std::vector<double> all;
    for (const auto i : lacking_) {
        const double has = after ? (1.0 - kFloat) * reaches(states.forms())[i].light(*after)
                                 : amount(i, studies_[i].with(cut));
        all.push_back((most_[i] - kRounding - has) / most_[i]);
    }
    return all;
}

} // namespace model::advice
