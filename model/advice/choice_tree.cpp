#include "model/advice/choice_tree.hpp"

#include <algorithm>
#include <ranges>

namespace model::advice {
namespace {

/// Every limb after all that its options leave open.
std::vector<std::size_t> leavesFirst(const Decisions& decisions)
{
    std::vector<std::size_t> order;
    std::vector<bool> seen(decisions.options.size());
    const auto visit = [&](const auto& self, std::size_t limb) -> void {
        if (seen[limb])
            return;
        seen[limb] = true;
        for (const auto& option : decisions.options[limb])
            for (const auto open : option.decide)
                self(self, open);
        order.push_back(limb);
    };
    visit(visit, decisions.root);
    return order;
}

} // namespace

ChoiceTree::ChoiceTree(const Decisions& decisions)
    : decisions_(decisions), first_{0}, opens_{0}, tipsFirst_(leavesFirst(decisions))
{
    for (std::size_t limb = 0; limb < decisions.options.size(); ++limb) {
        for (const auto& option : decisions.options[limb]) {
            limbOf_.push_back(limb);
            opened_.insert(opened_.end(), option.decide.begin(), option.decide.end());
            opens_.push_back(opened_.size());
        }
        first_.push_back(limbOf_.size());
    }
}

void ChoiceTree::leastSums(const PerOption& cost, const Allowed& allowed,
                           std::vector<double>& least) const
{
    least.assign(limbs(), kNever);
    for (const auto limb : tipsFirst_)
        for (std::size_t o = first_[limb]; o < first_[limb + 1]; ++o)
            if (allowed[o] != 0)
                least[limb] = std::min(least[limb], sum(o, cost[o], least));
}

void ChoiceTree::cheapest(const PerOption& cost, const Allowed& allowed,
                          const std::vector<double>& least,
                          std::vector<std::uint32_t>& chosen) const
{
    chosen.clear();
    std::vector<std::size_t> open{decisions_.root};
    while (!open.empty()) {
        const auto limb = open.back();
        open.pop_back();
        std::size_t best = first_[limb];
        double bestSum = kNever;
        for (std::size_t o = first_[limb]; o < first_[limb + 1]; ++o)
            if (const double s = allowed[o] != 0 ? sum(o, cost[o], least) : kNever; s < bestSum) {
                bestSum = s;
                best = o;
            }
        chosen.push_back(static_cast<std::uint32_t>(best));
        for (std::size_t i = opens_[best]; i < opens_[best + 1]; ++i)
            open.push_back(opened_[i]);
    }
}

std::size_t ChoiceTree::best(std::size_t limb, const PerOption& cost,
                             const std::vector<double>& least) const
{
    std::size_t best = first_[limb];
    double bestSum = kNever;
    for (std::size_t o = first_[limb]; o < first_[limb + 1]; ++o)
        if (const double s = sum(o, cost[o], least); s < bestSum) {
            bestSum = s;
            best = o;
        }
    return best;
}

void ChoiceTree::leastThrough(const PerOption& cost, const Allowed& allowed,
                              const std::vector<double>& least, PerOption& through) const
{
    through.assign(options(), kNever);
    std::vector<double> rest(limbs(), kNever); // of all but the limb and what grows from it
    rest[decisions_.root] = 0.0;
    for (const auto limb : std::views::reverse(tipsFirst_))
        for (std::size_t o = first_[limb]; o < first_[limb + 1]; ++o) {
            if (allowed[o] == 0 || rest[limb] == kNever)
                continue;
            through[o] = rest[limb] + sum(o, cost[o], least);
            for (std::size_t i = opens_[o]; i < opens_[o + 1] && through[o] < kNever; ++i)
                rest[opened_[i]] = std::min(rest[opened_[i]], through[o] - least[opened_[i]]);
        }
}

} // namespace model::advice
