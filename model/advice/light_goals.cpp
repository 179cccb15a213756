#include "model/advice/light_goals.hpp"

#include "model/advice/limb_part.hpp"
#include "model/advice/prune.hpp"

#include <algorithm>

namespace model::advice {
namespace {

constexpr double kRounding_h = 1e-6;
constexpr double kSameSpot_m = 1e-6;
constexpr double kRoundEnds = 1.001; // the round ends of shortened bodies overlap a little

/// Coarser than the light that is reported, and the same for every set of cuts: a tenth of the
/// rays, within 3 % of the hours (docs/methods/advice.md, A6).
constexpr std::chrono::minutes kStep{20};
constexpr int kDaysPerMonth = 1;

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

double sun_h(const std::vector<light::SurfaceDay>& days)
{
    return days.front().mean.sun_h;
}

} // namespace

LightGoals::LightGoals(const Garden& garden, const Tree& tree, const Surroundings& around,
                       std::chrono::year year, const std::vector<LightWish>& wishes)
    : tree_(tree), foliation_(around.foliations[static_cast<std::size_t>(
                       std::ranges::find(garden.trees, tree.id, &Tree::id) - garden.trees.begin())])
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
        question.skyDirections = 0;
        studies_.emplace_back(garden, around.foliations, around.tables, index,
                              std::vector{light::levelSurface(garden.plantings[wish.planting])},
                              question);
        wanted_h_.push_back(wish.sun_h);
        without_h_.push_back(sun_h(studies_.back().without()));
    }
    now_h_ = hours(tree);
    bare_h_ = hours(bareTrunk_);
    ease(1.0);
}

void LightGoals::ease(double share)
{
    most_h_.clear();
    lacking_.clear();
    for (std::size_t i = 0; i < studies_.size(); ++i) {
        most_h_.push_back(
            std::min(wanted_h_[i], now_h_[i] + share * std::max(0.0, wanted_h_[i] - now_h_[i])));
        if (now_h_[i] < most_h_[i] - kRounding_h)
            lacking_.push_back(i);
    }
    active_.clear();
    for (std::size_t way = 0; way < ways_.size(); ++way)
        activate(way);
}

/// A tree that is taken down piece by piece.
class LightGoals::Walk {
public:
    explicit Walk(const LightGoals& goals)
        : goals_(goals), standing_(goals.tree_.limbs), hours_(goals.now_h_)
    {
    }

    std::vector<double> liftAll()
    {
        bool any = false;
        for (auto& limb : standing_)
            if (limb.foliage && limb.foliage->hanging_m > 0.0) {
                limb.foliage->hanging_m = 0.0;
                any = true;
            }
        return any ? gained() : std::vector<double>(hours_.size(), 0.0);
    }

    std::vector<double> take(const Taken& taken)
    {
        auto& limb = standing_[taken.limb];
        if (limb.stations.empty())
            return std::vector<double>(hours_.size(), 0.0);
        if (taken.share < 1.0)
            limb.foliage->thinned = 1.0 - (1.0 - limb.foliage->thinned) * (1.0 - taken.share);
        else if (taken.from_m > kSameSpot_m)
            limb = limbPart(limb, 0.0, taken.from_m);
        else if (!limb.parent)
            limb.foliage.reset();
        else
            limb.stations.clear();
        return gained();
    }

private:
    std::vector<double> gained()
    {
        Tree tree = goals_.tree_;
        tree.limbs = {goals_.bareTrunk_.limbs[0]};
        for (const auto& limb : standing_) {
            if (limb.stations.empty())
                continue;
            if (!limb.parent) {
                tree.limbs[0] = limb;
                continue;
            }
            tree.limbs.push_back(limb);
            tree.limbs.back().parent = tree.limbs[0].id;
        }
        const auto now = goals_.hours(tree);
        std::vector<double> gain;
        for (std::size_t i = 0; i < now.size(); ++i)
            gain.push_back(std::max(0.0, now[i] - hours_[i]));
        hours_ = now;
        return gain;
    }

    const LightGoals& goals_;
    std::vector<Limb> standing_;
    std::vector<double> hours_;
};

std::vector<double> LightGoals::hours(const Tree& tree) const
{
    std::vector<double> all;
    for (const auto& study : studies_)
        all.push_back(sun_h(study.with(tree)));
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

const std::vector<double>& LightGoals::takenAlone_h(std::size_t limb, double from_m) const
{
    auto [known, isNew] = alone_h_.try_emplace({limb, from_m});
    if (isNew) {
        const Tree alone = standingAlone({limb, from_m, 1.0});
        const auto shaded = hours(alone);
        for (std::size_t i = 0; i < shaded.size(); ++i)
            known->second.push_back(std::max(0.0, bare_h_[i] - shaded[i]));
    }
    return known->second;
}

std::vector<double> LightGoals::help(const Taken& taken) const
{
    std::vector<double> all;
    if (lacking_.empty())
        return all;
    const auto& alone_h = takenAlone_h(taken.limb, taken.from_m);
    for (const auto i : lacking_)
        all.push_back(taken.share * alone_h[i] / (most_h_[i] - now_h_[i]));
    for (const auto& active : active_)
        all.push_back(kRoundEnds * gain_h(active, taken) / asked_h(active));
    return all;
}

double LightGoals::asked_h(const Active& active) const
{
    return most_h_[active.wish] - now_h_[active.wish] - ways_[active.way].credit_h[active.wish];
}

void LightGoals::activate(std::size_t way) const
{
    for (const auto wish : lacking_)
        if (asked_h({way, wish}) > kRounding_h)
            active_.push_back({way, wish});
}

/// At most what a taking gives back, were everything on the way before it gone already.
double LightGoals::gain_h(const Active& active, const Taken& taken) const
{
    const Leg& leg = ways_[active.way].legs[taken.limb];
    if (leg.rest_h.empty())
        return 0.0;
    const double first = leg.first_h[active.wish];
    const double whole = first + leg.rest_h[active.wish];
    if (taken.share < 1.0) {
        if (leg.share <= 0.0 || leg.share >= 1.0)
            return taken.share * whole;
        return taken.share <= leg.share
                   ? first * taken.share / leg.share
                   : std::lerp(first, whole, (taken.share - leg.share) / (1.0 - leg.share));
    }
    const bool within = leg.share >= 1.0 && taken.from_m >= leg.from_m - kSameSpot_m;
    return std::min(within ? first : whole, takenAlone_h(taken.limb, taken.from_m)[active.wish]);
}

std::vector<std::size_t> LightGoals::cheapestFirst() const
{
    std::vector<std::pair<double, std::size_t>> byPrice;
    for (std::size_t limb = 0; limb < tree_.limbs.size(); ++limb) {
        const auto& alone_h = takenAlone_h(limb, 0.0);
        double most = 0.0;
        for (const auto wish : lacking_)
            most = std::max(most, alone_h[wish]);
        if (most > 0.0)
            byPrice.emplace_back(ownLeaf_m2(tree_.limbs[limb], foliation_) / most, limb);
    }
    std::ranges::sort(byPrice);
    std::vector<std::size_t> limbs;
    for (const auto& price : byPrice)
        limbs.push_back(price.second);
    return limbs;
}

// What a set of cuts gives back grows by more the more is gone already (the gain is supermodular,
// thinning included). So the gains along any way from the whole tree to the bare stem, added up
// over a set, are at least what the set gives; for the set that comes first on the way they are
// that exactly (the core of a convex game: Shapley 1971).
LightGoals::Way LightGoals::wayPast(const std::vector<Cut>& cuts) const
{
    const auto order = limbOrder(tree_);
    std::vector<Leg> legs(tree_.limbs.size());
    const auto take = [&](std::size_t limb, double from_m) {
        if (legs[limb].share < 1.0 || from_m < legs[limb].from_m)
            legs[limb] = {from_m, 1.0, {}, {}};
    };
    for (const auto& cut : cuts) {
        const auto limb = limbIndex(tree_, cut.limb);
        if (cut.kind == CutKind::thinning && legs[limb].share <= 0.0)
            legs[limb].share = cut.share.value_or(0.0);
        if (cut.kind == CutKind::removal)
            for (const auto gone : limbAndBeyond(order, limb))
                take(gone, 0.0);
        if (cut.kind != CutKind::reduction)
            continue;
        take(limb, cut.at_m);
        for (const auto child : order.children[limb])
            if (tree_.limbs[child].attachedAt_m > cut.at_m + kSameSpot_m)
                for (const auto gone : limbAndBeyond(order, child))
                    take(gone, 0.0);
    }
    Walk walk(*this);
    Way way{walk.liftAll(), {}};
    const auto limbs = cheapestFirst();
    for (const auto limb : limbs)
        if (legs[limb].share >= 1.0)
            legs[limb].first_h = walk.take({limb, legs[limb].from_m, 1.0});
    for (const auto limb : limbs)
        if (legs[limb].share > 0.0 && legs[limb].share < 1.0)
            legs[limb].first_h = walk.take({limb, 0.0, legs[limb].share});
    for (const auto limb : limbs) {
        if (legs[limb].first_h.empty())
            legs[limb].first_h.assign(studies_.size(), 0.0);
        legs[limb].rest_h = walk.take({limb, 0.0, 1.0});
    }
    way.legs = std::move(legs);
    return way;
}

bool LightGoals::learn(const std::vector<Cut>& cuts) const
{
    constexpr std::size_t kWaysMost = 10; // each costs the search a little at every step
    if (lacking_.empty() || ways_.size() >= kWaysMost)
        return false;
    if (!cuts.empty() && met(afterCuts(tree_, cuts)))
        return false; // it was something else that they fell short of
    ways_.push_back(wayPast(cuts));
    const auto known = active_.size();
    activate(ways_.size() - 1);
    const auto& legs = ways_.back().legs;
    const bool isNew = std::any_of(active_.begin() + static_cast<std::ptrdiff_t>(known),
                                   active_.end(), [&](const Active& a) {
                                       double sum_h = 0.0;
                                       for (const auto& leg : legs)
                                           sum_h += leg.first_h.empty() ? 0.0 : leg.first_h[a.wish];
                                       return kRoundEnds * sum_h < asked_h(a) - kRounding_h;
                                   });
    if (!isNew) {
        active_.resize(known);
        ways_.pop_back();
    }
    return isNew;
}

bool LightGoals::met(const Tree& cut) const
{
    return std::ranges::all_of(lacking_, [&](std::size_t i) {
        return sun_h(studies_[i].with(cut)) >= most_h_[i] - kRounding_h;
    });
}

} // namespace model::advice
