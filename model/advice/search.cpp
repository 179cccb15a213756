#include "model/advice/search.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

namespace model::advice {
namespace {

constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kSame = 1e-12; // shares closer than this are the same amount of leaf

constexpr double kNotYet = -1.0;

double relax(const Decisions& decisions, std::size_t limb, std::vector<double>& least)
{
    if (least[limb] != kNotYet)
        return least[limb];
    double best = kNever;
    for (const auto& option : decisions.options[limb]) {
        double sum = option.leaf;
        for (const auto open : option.decide)
            sum += relax(decisions, open, least);
        best = std::min(best, sum);
    }
    return least[limb] = best;
}

class Search {
public:
    Search(const Decisions& decisions, const std::atomic<bool>* cancel)
        : decisions_(decisions), cancel_(cancel), least_(relaxedLeaf(decisions))
    {
        for (std::size_t limb = 0; limb < decisions.options.size(); ++limb)
            cheapestFirst_.push_back(byPromise(decisions.options[limb]));
    }

    Choice run()
    {
        open_.push_back(decisions_.root);
        descend(0.0, 0.0, least_[decisions_.root]);
        best_.proven = !stopped_;
        best_.nodes = nodes_;
        return best_;
    }

private:
    double promise(const Option& option) const
    {
        return std::accumulate(option.decide.begin(), option.decide.end(), option.leaf,
                               [this](double sum, std::size_t limb) { return sum + least_[limb]; });
    }

    std::vector<const Option*> byPromise(const std::vector<Option>& options) const
    {
        std::vector<const Option*> sorted;
        for (const auto& option : options)
            if (promise(option) < kNever)
                sorted.push_back(&option);
        std::ranges::stable_sort(sorted, {}, [this](const Option* o) { return promise(*o); });
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
        return wound_m2 >= bestWound_m2_;
    }

    /// `rest` is the bound on the leaf that the open limbs still cost.
    void descend(double leaf, double wound_m2, double rest)
    {
        if (stopped_ || (cancel_ && cancel_->load(std::memory_order_relaxed))) {
            stopped_ = true;
            return;
        }
        ++nodes_;
        if (leaf + rest > decisions_.leafMost + kSame || wound_m2 > decisions_.woundMost_m2 ||
            worse(leaf + rest, wound_m2))
            return;
        if (open_.empty()) {
            if (decisions_.crownAccepts && !decisions_.crownAccepts(cuts_))
                return;
            best_.found = true;
            best_.cuts = cuts_;
            best_.leaf = leaf;
            bestWound_m2_ = wound_m2;
            return;
        }
        const auto limb = open_.back();
        open_.pop_back();
        for (const auto* option : cheapestFirst_[limb])
            take(*option, leaf, wound_m2, rest - least_[limb]);
        open_.push_back(limb);
    }

    void take(const Option& option, double leaf, double wound_m2, double restOfOthers)
    {
        const auto openBefore = open_.size();
        const auto cutsBefore = cuts_.size();
        open_.insert(open_.end(), option.decide.begin(), option.decide.end());
        cuts_.insert(cuts_.end(), option.cuts.begin(), option.cuts.end());
        descend(leaf + option.leaf, wound_m2 + option.wound_m2,
                restOfOthers + promise(option) - option.leaf);
        cuts_.resize(cutsBefore);
        open_.resize(openBefore);
    }

    const Decisions& decisions_;
    const std::atomic<bool>* cancel_;
    std::vector<double> least_;
    std::vector<std::vector<const Option*>> cheapestFirst_;
    std::vector<std::size_t> open_;
    std::vector<Cut> cuts_;
    Choice best_;
    double bestWound_m2_{kNever};
    long nodes_{};
    bool stopped_{};
};

} // namespace

std::vector<double> relaxedLeaf(const Decisions& decisions)
{
    std::vector<double> least(decisions.options.size(), kNotYet);
    relax(decisions, decisions.root, least);
    return least;
}

Choice leastLeaf(const Decisions& decisions, const std::atomic<bool>* cancel)
{
    if (relaxedLeaf(decisions)[decisions.root] == kNever)
        return {.found = false, .cuts = {}, .leaf = 0.0, .proven = true, .nodes = 1};
    return Search(decisions, cancel).run();
}

} // namespace model::advice
