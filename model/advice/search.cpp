#include "model/advice/search.hpp"

#include "model/advice/search_bound.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

namespace model::advice {
namespace {

constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kSame = 1e-12; // shares closer than this are the same amount of leaf
constexpr double kSlack = 1e-9; // rounding in sums of help

/// One set of prices and what it says of every limb.
struct Bound {
    Prices prices;
    double paid{}; ///< atStake
    std::vector<double> least;
};

Bound boundAt(const Decisions& decisions, Prices prices)
{
    Bound bound;
    bound.paid = atStake(decisions, prices);
    bound.least = leastPriced(decisions, prices);
    bound.prices = std::move(prices);
    return bound;
}

/// Without prices, with the best for each goal alone, and with the best for all together: a node is
/// as bad as the worst of them says.
std::vector<Bound> bounds(const Decisions& decisions)
{
    constexpr std::size_t kAloneMost = 6; // more of them cost more than they spare
    std::vector<Bound> all{boundAt(decisions, noPrices(decisions))};
    for (std::size_t goal = 0; goal < decisions.goals && decisions.goals <= kAloneMost; ++goal) {
        std::vector<bool> alone(decisions.goals);
        alone[goal] = true;
        if (decisions.goals > 1)
            all.push_back(boundAt(decisions, bestPrices(decisions, alone)));
    }
    all.push_back(
        boundAt(decisions, bestPrices(decisions, std::vector<bool>(decisions.goals, true))));
    return all;
}

class Search {
public:
    Search(const Decisions& decisions, const std::atomic<bool>* cancel)
        : decisions_(decisions), cancel_(cancel), bounds_(bounds(decisions)), hope_(decisions.goals)
    {
        for (std::size_t goal = 0; goal < decisions.goals; ++goal) {
            mostHelp_.push_back(mostHelp(decisions, goal));
            hope_[goal] = mostHelp_.back()[decisions.root];
        }
        for (const auto& bound : bounds_)
            now_.push_back(bound.paid + bound.least[decisions.root]);
        best_ = decisions.start;
        rootBound_ = *std::ranges::max_element(now_);
        for (const auto& options : decisions.options)
            cheapestFirst_.push_back(byPromise(options));
    }

    Choice run()
    {
        open_.push_back(decisions_.root);
        descend(0.0, 0.0);
        best_.proven = !stopped_;
        best_.bound = best_.proven && best_.found ? best_.leaf : std::max(0.0, rootBound_);
        best_.nodes = nodes_;
        best_.asked = asked_;
        return best_;
    }

private:
    /// What an option with all that it leaves open costs at least, by one bound.
    double promise(const Option& option, const Bound& bound) const
    {
        return std::accumulate(
            option.decide.begin(), option.decide.end(), priced(option, bound.prices),
            [&](double sum, std::size_t limb) { return sum + bound.least[limb]; });
    }

    std::vector<const Option*> byPromise(const std::vector<Option>& options) const
    {
        const Bound& dearest = bounds_.back();
        std::vector<const Option*> sorted;
        for (const auto& option : options)
            if (promise(option, bounds_.front()) < kNever)
                sorted.push_back(&option);
        std::ranges::stable_sort(sorted, {}, [&](const Option* o) { return promise(*o, dearest); });
        return sorted;
    }

    bool worse(double leaf, double wound_m2) const
    {
        if (!best_.found || leaf < best_.leaf - kSame)
            return false;
        if (leaf > best_.leaf + kSame)
            return true;
        if (cuts_.size() != best_.cuts.size())
            return cuts_.size() > best_.cuts.size();
        return wound_m2 >= best_.wound_m2;
    }

    bool hopeless() const
    {
        return std::ranges::any_of(hope_, [](double most) { return most < 1.0 - kSlack; });
    }

    bool mustStop()
    {
        stopped_ = stopped_ || (decisions_.again && decisions_.again->load()) ||
                   (cancel_ && cancel_->load(std::memory_order_relaxed)) ||
                   nodes_ >= decisions_.nodesMost || asked_ >= decisions_.askedMost;
        return stopped_;
    }

    void descend(double leaf, double wound_m2)
    {
        if (mustStop())
            return;
        ++nodes_;
        // No completion costs less than the dearest of the bounds says.
        const double least = std::max(leaf, *std::ranges::max_element(now_));
        if (least > decisions_.leafMost + kSame || wound_m2 > decisions_.woundMost_m2 ||
            worse(least, wound_m2) || hopeless())
            return;
        if (open_.empty())
            return complete(leaf, wound_m2);
        const auto limb = open_.back();
        open_.pop_back();
        for (const auto* option : cheapestFirst_[limb])
            take(*option, limb, leaf, wound_m2);
        open_.push_back(limb);
    }

    void complete(double leaf, double wound_m2)
    {
        ++asked_;
        if (decisions_.crownAccepts && !decisions_.crownAccepts(cuts_))
            return;
        best_.found = true;
        best_.cuts = cuts_;
        best_.leaf = leaf;
        best_.wound_m2 = wound_m2;
    }

    void take(const Option& option, std::size_t limb, double leaf, double wound_m2)
    {
        const auto openBefore = open_.size();
        const auto cutsBefore = cuts_.size();
        const auto nowBefore = now_;
        const auto hopeBefore = hope_;
        for (std::size_t i = 0; i < bounds_.size(); ++i)
            now_[i] += promise(option, bounds_[i]) - bounds_[i].least[limb];
        for (std::size_t goal = 0; goal < hope_.size(); ++goal)
            hope_[goal] += hopeOf(option, goal) - mostHelp_[goal][limb];
        open_.insert(open_.end(), option.decide.begin(), option.decide.end());
        cuts_.insert(cuts_.end(), option.cuts.begin(), option.cuts.end());
        descend(leaf + option.leaf, wound_m2 + option.wound_m2);
        cuts_.resize(cutsBefore);
        open_.resize(openBefore);
        now_ = nowBefore;
        hope_ = hopeBefore;
    }

    double hopeOf(const Option& option, std::size_t goal) const
    {
        return std::accumulate(
            option.decide.begin(), option.decide.end(),
            goal < option.helps.size() ? option.helps[goal] : 0.0,
            [&](double sum, std::size_t open) { return sum + mostHelp_[goal][open]; });
    }

    const Decisions& decisions_;
    const std::atomic<bool>* cancel_;
    std::vector<Bound> bounds_;
    std::vector<std::vector<double>> mostHelp_; ///< by goal, then limb
    std::vector<std::vector<const Option*>> cheapestFirst_;
    std::vector<std::size_t> open_;
    std::vector<Cut> cuts_;
    std::vector<double> now_;  ///< by bound: least leaf of any completion of what is decided
    std::vector<double> hope_; ///< by goal: most help of any completion of what is decided
    double rootBound_{};
    Choice best_;
    long nodes_{};
    long asked_{};
    bool stopped_{};
};

} // namespace

std::vector<double> relaxedLeaf(const Decisions& decisions)
{
    return leastPriced(decisions, noPrices(decisions));
}

Choice leastLeaf(const Decisions& decisions, const std::atomic<bool>* cancel)
{
    if (relaxedLeaf(decisions)[decisions.root] == kNever)
        return {.found = false,
                .cuts = {},
                .leaf = 0.0,
                .wound_m2 = 0.0,
                .proven = true,
                .bound = 0.0,
                .nodes = 1,
                .asked = 0};
    return Search(decisions, cancel).run();
}

} // namespace model::advice
