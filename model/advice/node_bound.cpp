#include "model/advice/node_bound.hpp"

#include "model/advice/blend.hpp"

#include <algorithm>
#include <cmath>

namespace model::advice {
namespace {

// Far below what anybody could cut by, far above rounding.
constexpr double kPerCut = 1e-8;
constexpr double kForWound = 1e-10;
constexpr double kClose = 1e-10; ///< bound and blend this close: nothing more is to be had
constexpr double kSlack = 1e-9;  ///< rounding in sums of help
constexpr std::size_t kKnownMost = 250;
constexpr int kRounds = 60;

} // namespace

Bounder::Bounder(const Decisions& decisions)
    : decisions_(decisions), tree_(decisions), woundCounts_(std::isfinite(decisions.woundMost_m2)),
      woundScale_m2_(woundCounts_ ? std::max(decisions.woundMost_m2, 1e-9) : 1.0)
{
    reach_.asked.assign(decisions.goals, 1.0);
    reach_.helps.assign(decisions.goals, PerOption(tree_.options(), 0.0));
    for (std::size_t o = 0; o < tree_.options(); ++o) {
        const auto& option = tree_.option(o);
        base_.push_back(option.leaf + hairs(option.cuts.size(), option.wound_m2));
        for (std::size_t goal = 0; goal < option.helps.size(); ++goal)
            reach_.helps[goal][o] = option.helps[goal];
    }
    charged_.resize(tree_.options());
}

double Bounder::hairs(std::size_t cuts, double wound_m2) const
{
    return kPerCut * static_cast<double>(cuts) + kForWound * wound_m2 / woundScale_m2_;
}

double Bounder::cost(const Picks& picks) const
{
    double sum = 0.0;
    for (const auto o : picks)
        sum += base_[o];
    return sum;
}

double Bounder::leaf(const Picks& picks) const
{
    double sum = 0.0;
    for (const auto o : picks)
        sum += tree_.option(o).leaf;
    return sum;
}

double Bounder::wound_m2(const Picks& picks) const
{
    double sum = 0.0;
    for (const auto o : picks)
        sum += tree_.option(o).wound_m2;
    return sum;
}

std::vector<Cut> Bounder::cuts(const Picks& picks) const
{
    std::vector<Cut> all;
    for (const auto o : picks)
        all.insert(all.end(), tree_.option(o).cuts.begin(), tree_.option(o).cuts.end());
    return all;
}

bool Bounder::fits(const Picks& picks) const
{
    const auto given = gives(picks);
    const auto needed = needs();
    for (std::size_t row = 0; row < needed.size(); ++row)
        if (given[row] < needed[row] - kSlack)
            return false;
    return wound_m2(picks) <= decisions_.woundMost_m2;
}

/// Goals, then (as a need for fewer) wounds.
std::vector<double> Bounder::needs() const
{
    auto all = reach_.asked;
    if (woundCounts_)
        all.push_back(-decisions_.woundMost_m2 / woundScale_m2_);
    return all;
}

std::vector<double> Bounder::gives(const Picks& picks) const
{
    std::vector<double> all(decisions_.goals, 0.0);
    for (std::size_t goal = 0; goal < all.size(); ++goal)
        for (const auto o : picks)
            all[goal] += reach_.helps[goal][o];
    if (woundCounts_)
        all.push_back(-wound_m2(picks) / woundScale_m2_);
    return all;
}

void Bounder::charge(const std::vector<double>& prices)
{
    charged_ = base_;
    for (std::size_t goal = 0; goal < decisions_.goals; ++goal)
        if (const double price = prices[goal]; price > 0.0)
            for (std::size_t o = 0; o < charged_.size(); ++o)
                charged_[o] -= price * reach_.helps[goal][o];
    if (woundCounts_ && prices.back() > 0.0)
        for (std::size_t o = 0; o < charged_.size(); ++o)
            charged_[o] += prices.back() * tree_.option(o).wound_m2 / woundScale_m2_;
}

bool Bounder::allows(const Allowed& allowed, const Picks& picks) const
{
    return std::ranges::all_of(picks, [&](std::uint32_t o) { return allowed[o] != 0; });
}

NodeBound Bounder::bound(Allowed& allowed, double cutoff)
{
    const auto needed = needs();
    Blend blend(needed);
    std::vector<Picks> offers;
    const auto offer = [&](const Picks& picks) {
        blend.add(cost(picks), gives(picks));
        offers.push_back(picks);
    };
    for (const auto& picks : known_)
        if (allows(allowed, picks))
            offer(picks);
    NodeBound found;
    found.bound = -ChoiceTree::kNever;
    std::vector<double> prices(needed.size(), 0.0);
    std::vector<double> best = prices;
    Picks picks;
    for (int round = 0; round < kRounds; ++round) {
        if (blend.offers() > 0) {
            blend.solve();
            prices = blend.prices();
        }
        charge(prices);
        tree_.leastSums(charged_, allowed, least_);
        double bound = least_[decisions_.root];
        if (bound == ChoiceTree::kNever) {
            found.bound = bound;
            return found;
        }
        for (std::size_t row = 0; row < needed.size(); ++row)
            bound += prices[row] * needed[row];
        if (bound > found.bound) {
            found.bound = bound;
            best = prices;
        }
        if (found.bound >= cutoff)
            return found;
        tree_.cheapest(charged_, allowed, least_, picks);
        const bool stuck = std::ranges::find(offers, picks) != offers.end();
        if (!offers.empty() && (stuck || blend.cost() - found.bound < kClose))
            break;
        offer(picks);
        known_.push_back(picks);
    }
    if (known_.size() > kKnownMost)
        known_.erase(known_.begin(),
                     known_.begin() + static_cast<std::ptrdiff_t>(known_.size() - kKnownMost / 2));
    charge(best);
    tree_.leastSums(charged_, allowed, least_);
    tree_.leastThrough(charged_, allowed, least_, through_);
    double paid = 0.0;
    for (std::size_t row = 0; row < needed.size(); ++row)
        paid += best[row] * needed[row];
    for (std::size_t o = 0; o < through_.size(); ++o)
        if (through_[o] + paid >= cutoff)
            allowed[o] = 0;
    found.weight.assign(tree_.options(), 0.0);
    if (offers.size() == 1)
        blend.solve();
    const auto shares = blend.shares();
    std::size_t most = 0;
    for (std::size_t i = 0; i < offers.size(); ++i) {
        if (shares[i] > shares[most])
            most = i;
        for (const auto o : offers[i])
            found.weight[o] += shares[i];
    }
    found.cheapest = offers[most];
    found.whole = shares[most] > 1.0 - 1e-7;
    return found;
}

} // namespace model::advice
