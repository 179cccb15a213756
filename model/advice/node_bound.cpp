#include "model/advice/node_bound.hpp"

#include "model/advice/blend.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <ranges>

namespace model::advice {
namespace {

// Far below what anybody could cut by, far above rounding.
constexpr double kPerCut = 1e-8;
constexpr double kForWound = 1e-10;
constexpr double kClose = 1e-10; ///< bound and blend this close: nothing more is to be had
constexpr double kSlack = 1e-9;  ///< rounding in sums of help
constexpr double kNoRoom = 1e-9; ///< so that nothing is divided by 0
constexpr std::size_t kKnownMost = 250;
constexpr std::size_t kBindingMost = 6; // few rows bind at once, and each makes bounds dearer
constexpr int kRounds = 60;

} // namespace

Bounder::Bounder(const Decisions& decisions)
    : decisions_(decisions), tree_(decisions), limits_(decisions.limits)
{
    if (std::isfinite(decisions.woundMost_m2)) {
        woundScale_m2_ = std::max(decisions.woundMost_m2, kNoRoom);
        Limit wounds{{}, decisions.woundMost_m2};
        for (std::size_t o = 0; o < tree_.options(); ++o)
            wounds.takes.push_back(tree_.option(o).wound_m2);
        limits_.push_back(std::move(wounds));
    }
    for (const auto& limit : limits_) {
        double most = std::max(limit.most, kNoRoom);
        for (const double takes : limit.takes)
            most = std::max(most, takes);
        scales_.push_back(most);
    }
    if (std::isfinite(decisions.woundMost_m2))
        heeded_.push_back(limits_.size() - 1);
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

void Bounder::add(const Reach& reach)
{
    for (std::size_t goal = 0; goal < reach.asked.size(); ++goal)
        if (std::ranges::find(reach_.helps, reach.helps[goal]) == reach_.helps.end()) {
            reach_.asked.push_back(reach.asked[goal]);
            reach_.helps.push_back(reach.helps[goal]);
        }
}

Reach Bounder::binding(const NodeBound& found) const
{
    std::vector<std::size_t> rows;
    for (std::size_t row = decisions_.goals; row < reach_.asked.size(); ++row)
        if (found.prices[row] > 0.0)
            rows.push_back(row);
    std::ranges::stable_sort(rows, std::ranges::greater{},
                             [&](std::size_t row) { return found.prices[row]; });
    Reach binding;
    for (const auto row : rows | std::views::take(kBindingMost)) {
        binding.asked.push_back(reach_.asked[row]);
        binding.helps.push_back(reach_.helps[row]);
    }
    return binding;
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

double Bounder::taken(const Limit& limit, const Picks& picks)
{
    double sum = 0.0;
    for (const auto o : picks)
        sum += limit.takes[o];
    return sum;
}

bool Bounder::fits(const Picks& picks) const
{
    for (std::size_t row = 0; row < reach_.asked.size(); ++row) {
        double given = 0.0;
        for (const auto o : picks)
            given += reach_.helps[row][o];
        if (given < reach_.asked[row] - kSlack)
            return false;
    }
    return std::ranges::all_of(
        limits_, [&](const Limit& limit) { return taken(limit, picks) <= limit.most; });
}

std::vector<std::size_t> Bounder::limiting() const
{
    std::vector<std::size_t> all;
    std::ranges::copy_if(heeded_, std::back_inserter(all),
                         [this](std::size_t i) { return i < decisions_.limits.size(); });
    return all;
}

bool Bounder::heed(const Picks& picks)
{
    const auto known = heeded_.size();
    for (std::size_t i = 0; i < limits_.size(); ++i)
        if (taken(limits_[i], picks) > limits_[i].most &&
            std::ranges::find(heeded_, i) == heeded_.end())
            heeded_.push_back(i);
    return heeded_.size() > known;
}

/// Of goals, then (as a need for less) of limits.
std::vector<double> Bounder::needs() const
{
    auto all = reach_.asked;
    for (const auto i : heeded_)
        all.push_back(-limits_[i].most / scales_[i]);
    return all;
}

std::vector<double> Bounder::gives(const Picks& picks) const
{
    std::vector<double> all(reach_.asked.size(), 0.0);
    for (std::size_t row = 0; row < all.size(); ++row)
        for (const auto o : picks)
            all[row] += reach_.helps[row][o];
    for (const auto i : heeded_)
        all.push_back(-taken(limits_[i], picks) / scales_[i]);
    return all;
}

void Bounder::charge(const std::vector<double>& prices)
{
    charged_ = base_;
    const auto add = [&](double price, const PerOption& per) {
        for (std::size_t o = 0; price != 0.0 && o < charged_.size(); ++o)
            charged_[o] += price * per[o];
    };
    const auto goals = reach_.asked.size();
    for (std::size_t row = 0; row < goals; ++row)
        add(-prices[row], reach_.helps[row]);
    for (std::size_t i = 0; i < heeded_.size(); ++i)
        add(prices[goals + i] / scales_[heeded_[i]], limits_[heeded_[i]].takes);
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
    found.prices = best;
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
