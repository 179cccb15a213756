#include "model/advice/spared_tails.hpp"

#include "model/advice/limb_faults.hpp"
#include "model/advice/prune.hpp"

#include <algorithm>
#include <iterator>

namespace model::advice {

std::vector<std::vector<Finding>> sparedTails(const Tree& tree, const Foliation& foliation,
                                              const std::vector<Cut>& cuts)
{
    const auto shares = innerLeafShares(tree, foliation);
    const auto tailsAfter = [&](const std::vector<Cut>& made) {
        return lionTails(tree, shares, afterCuts(tree, made), foliation);
    };
    const auto left = tailsAfter(cuts);
    std::vector<std::vector<Finding>> all;
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        auto others = cuts;
        others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
        auto& spared = all.emplace_back();
        std::ranges::copy_if(
            tailsAfter(others), std::back_inserter(spared), [&](const Finding& tail) {
                return std::ranges::find(left, tail.subject, &Finding::subject) == left.end();
            });
        for (auto& tail : spared)
            tail.severity = Severity::inform;
    }
    return all;
}

} // namespace model::advice
