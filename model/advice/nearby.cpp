#include "model/advice/nearby.hpp"

#include <algorithm>
#include <utility>

namespace model::advice {
namespace {

constexpr double kLess = 1e-9;     // differences below are rounding
constexpr std::size_t kPairs = 24; // of those that promise most, measured
constexpr double kMayDo = 0.01;    // foreseen to be lacking: may yet do
constexpr double kSameLeaf = 1e-12;
constexpr double kNearlyAsGood = 1.02;
constexpr double kHairOfLeaf = 1e-6; // so that what costs nothing has a price too

double sumOf(const std::vector<double>& missing)
{
    double sum = 0.0;
    for (const double part : missing)
        sum += std::max(0.0, part);
    return sum;
}

/// What a change is worth: as long as something is lacking, what it brings for its leaf; then the
/// leaf it saves, as long as nothing comes to be lacking.
double worth(double lacksNow, double lacksThen, double costs)
{
    if (lacksNow > 0.0)
        return lacksThen < lacksNow - kLess ? (lacksNow - lacksThen) / std::max(kHairOfLeaf, costs)
                                            : 0.0;
    return lacksThen < kMayDo && costs < -kLess ? -costs - lacksThen : 0.0;
}

} // namespace

Nearby::Nearby(const Decisions& decisions, const Bounder& bounder, const std::atomic<bool>* cancel)
    : decisions_(decisions), bounder_(bounder), tree_(bounder.tree()), cancel_(cancel)
{
    PerOption cost(tree_.options());
    for (std::size_t o = 0; o < cost.size(); ++o)
        cost[o] = bounder_.cost({static_cast<std::uint32_t>(o)});
    const Allowed all(cost.size(), 1);
    std::vector<double> least;
    PerOption through;
    tree_.leastSums(cost, all, least);
    tree_.leastThrough(cost, all, least, through);
    for (const double sum : through)
        hopeless_.push_back(sum == ChoiceTree::kNever ? 1 : 0);
    for (std::size_t limb = 0; limb < tree_.limbs(); ++limb)
        atEase_.push_back(static_cast<std::uint32_t>(tree_.best(limb, cost, least)));
}

bool Nearby::mustStop() const
{
    return measures_ >= measuresMost_ || (cancel_ && cancel_->load(std::memory_order_relaxed));
}

Picks Nearby::picksOf(const Plan& plan) const
{
    Picks picks;
    std::vector<std::size_t> open{decisions_.root};
    while (!open.empty()) {
        const auto option = plan[open.back()];
        open.pop_back();
        picks.push_back(option);
        const auto& decide = tree_.option(option).decide;
        open.insert(open.end(), decide.begin(), decide.end());
    }
    return picks;
}

const std::vector<double>& Nearby::missing(const Picks& picks)
{
    const auto known = known_.find(picks);
    if (known != known_.end())
        return known->second;
    constexpr long kTellEvery = 16;
    if (tell_ && measures_ % kTellEvery == 0)
        tell_();
    ++measures_;
    return known_.emplace(picks, decisions_.missing(picks, bounder_.cuts(picks))).first->second;
}

Nearby::Standing Nearby::standing(Plan plan)
{
    Standing all;
    all.plan = std::move(plan);
    all.picks = picksOf(all.plan);
    all.cost = bounder_.cost(all.picks);
    all.missing = missing(all.picks);
    all.lacks = sumOf(all.missing);
    all.allowed = !all.missing.empty() &&
                  bounder_.leaf(all.picks) <= decisions_.leafMost + kSameLeaf &&
                  bounder_.wound_m2(all.picks) <= decisions_.woundMost_m2;
    return all;
}

/// After a change; what one by itself does is remembered.
Nearby::Standing Nearby::standing(const Standing& now, const Change& change)
{
    auto plan = now.plan;
    const auto limb = tree_.limbOf(change.option);
    const auto was = plan[limb];
    plan[limb] = change.option;
    if (change.second)
        plan[tree_.limbOf(*change.second)] = *change.second;
    auto all = standing(std::move(plan));
    if (change.second || all.missing.empty())
        return all;
    auto& effect = effects_[change.option];
    effect = effects_[was];
    effect.resize(all.missing.size());
    for (std::size_t i = 0; i < effect.size(); ++i)
        effect[i] += all.missing[i] - now.missing[i];
    return all;
}

/// What would be lacking if effects added up and were what they were when last measured.
double Nearby::foreseen(const Standing& now, std::uint32_t one,
                        std::optional<std::uint32_t> two) const
{
    const auto& e1 = effects_[one];
    const auto& w1 = effects_[now.plan[tree_.limbOf(one)]];
    const auto at = [](const std::vector<double>& effect, std::size_t i) {
        return effect.empty() ? 0.0 : effect[i];
    };
    double lacks = 0.0;
    for (std::size_t i = 0; i < now.missing.size(); ++i) {
        double then = now.missing[i] + at(e1, i) - at(w1, i);
        if (two)
            then += at(effects_[*two], i) - at(effects_[now.plan[tree_.limbOf(*two)]], i);
        lacks += std::max(0.0, then);
    }
    return lacks;
}

/// All changes of what one limb does; those never measured first, for they may be worth anything.
std::vector<Nearby::Change> Nearby::singles(const Standing& now) const
{
    std::vector<Change> all;
    for (const auto pick : now.picks) {
        const auto limb = tree_.limbOf(pick);
        for (std::size_t o = tree_.first(limb); o < tree_.first(limb + 1); ++o) {
            if (o == pick || shunned_[o] != 0)
                continue;
            Change change{static_cast<std::uint32_t>(o), std::nullopt, 0.0, 0.0};
            auto plan = now.plan;
            plan[limb] = change.option;
            change.cost = bounder_.cost(picksOf(plan));
            if (effects_[o].empty())
                change.worth = ChoiceTree::kNever;
            else
                change.worth =
                    worth(now.lacks, foreseen(now, change.option, {}), change.cost - now.cost);
            all.push_back(change);
        }
    }
    return all;
}

std::vector<Nearby::Change> Nearby::pairs(const Standing& now,
                                          const std::vector<Change>& ones) const
{
    std::vector<Change> all;
    for (std::size_t a = 0; a < ones.size(); ++a)
        for (std::size_t b = a + 1; b < ones.size(); ++b) {
            const auto one = ones[a].option;
            const auto two = ones[b].option;
            const double more = ones[a].cost + ones[b].cost - 2.0 * now.cost;
            if (tree_.limbOf(one) == tree_.limbOf(two) || effects_[one].empty() ||
                effects_[two].empty() || (now.lacks <= 0.0 && more > -kLess))
                continue;
            const double brings = worth(now.lacks, foreseen(now, one, two), more);
            if (brings > 0.0)
                all.push_back({one, two, now.cost + more, brings});
        }
    return all;
}

/// The best of the changes, measured in the order of what they promise, until no other promises
/// more than one has brought.
std::optional<Nearby::Standing> Nearby::step(const Standing& now, std::vector<Change> changes,
                                             std::size_t most)
{
    std::erase_if(changes, [](const Change& change) { return change.worth <= 0.0; });
    const auto shown = std::min(most, changes.size());
    std::ranges::partial_sort(changes, changes.begin() + static_cast<std::ptrdiff_t>(shown),
                              [](const Change& x, const Change& y) {
                                  return x.worth != y.worth ? x.worth > y.worth
                                                            : std::pair(x.option, x.second) <
                                                                  std::pair(y.option, y.second);
                              });
    std::optional<Standing> best;
    double bestWorth = 0.0;
    for (std::size_t i = 0; i < shown && !mustStop() && changes[i].worth > bestWorth; ++i) {
        auto then = standing(now, changes[i]);
        const double brings = worth(now.lacks, then.lacks, then.cost - now.cost);
        const bool better = now.lacks > 0.0 || then.lacks <= 0.0;
        if (!then.allowed || !better || brings <= bestWorth)
            continue;
        bestWorth = brings;
        best = std::move(then);
    }
    return best;
}

/// One change after the other, as long as each betters it.
/// \param known  costs of what is already known to do: what stays dearer isn't looked at closely
/// \return the last that does what is asked
std::optional<Nearby::Standing> Nearby::descend(Standing now, double known)
{
    std::optional<Standing> best;
    bool fresh = false; // effects are those of here
    while (!now.missing.empty() && !mustStop()) {
        if (now.allowed && now.lacks <= 0.0)
            best = now;
        if (best && decisions_.anyWillDo)
            break;
        const auto ones = singles(now);
        auto next = step(now, ones, ones.size());
        if (!next)
            next = step(now, pairs(now, ones), kPairs);
        if (!next && (fresh || now.cost > kNearlyAsGood * known))
            break;
        fresh = !next;
        if (next)
            now = *std::move(next);
        else
            effects_.assign(tree_.options(), {});
    }
    return best;
}

std::optional<Picks> Nearby::from(const Picks& start, long measuresMost, std::function<void()> tell)
{
    tell_ = std::move(tell);
    measuresMost_ = measures_ + measuresMost;
    auto plan = atEase_;
    for (const auto pick : start)
        plan[tree_.limbOf(pick)] = pick;
    effects_.assign(tree_.options(), {});
    shunned_ = hopeless_;
    auto best = descend(standing(std::move(plan)), ChoiceTree::kNever);
    for (std::size_t i = 0; best && i < best->picks.size() && !mustStop(); ++i) {
        const auto pick = best->picks[i];
        const auto limb = tree_.limbOf(pick);
        if (pick == atEase_[limb] || decisions_.anyWillDo)
            continue;
        auto without = best->plan;
        without[limb] = atEase_[limb];
        shunned_[pick] = 1;
        auto other = descend(standing(std::move(without)), best->cost);
        shunned_[pick] = 0;
        if (!other || other->cost > best->cost - kLess)
            continue;
        best = std::move(other);
        i = 0;
    }
    return best ? std::optional(best->picks) : std::nullopt;
}

} // namespace model::advice
