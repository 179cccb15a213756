#pragma once

#include "model/advice/crown_shape.hpp"
#include "model/advice/rule.hpp"
#include "model/advice/search.hpp"
#include "model/advice/targets.hpp"

#include <algorithm>
#include <atomic>
#include <functional>
#include <vector>

namespace model::advice {

/// How long one search goes on before it gives up.
struct Effort {
    long nodes{Decisions{}.nodesMost};       ///< partial choices looked at
    long asked{Decisions{}.askedMost};       ///< cut trees measured
    long measures{Decisions{}.measuresMost}; ///< more of them, near each set that is found
    Progress progress{};                     ///< of the search that trusts the bound alone
};

/// One tree and what the guideline lets be taken of it: answers "what is the least leaf for this?".
class Guideline {
public:
    /// \param allowance  share of the tree's leaf that may go
    Guideline(const Tree& tree, const Foliation& foliation, double allowance,
              const std::atomic<bool>* cancel, Effort effort = {});

    /// \param without  rules left out of account: to see whether one is what binds, or what could
    ///                 be had over several seasons
    [[nodiscard]] Choice least(const Targets& targets, const std::vector<Rule>& without = {}) const;

    /// Any set of cuts that reaches the targets, however much leaf within the allowance it takes.
    [[nodiscard]] Choice any(const Targets& targets) const;

    /// The least leaf for the targets if no rule stood in the way; not `found`: nothing reaches
    /// them.
    [[nodiscard]] Choice leastWithoutAny(const Targets& targets) const;

    /// The rules without which the targets could be reached, with the share that would take.
    [[nodiscard]] std::vector<Finding> binding(const Targets& targets) const;

private:
    /// What a set of cuts must keep.
    struct Limits {
        double leaf{};
        double wound_m2{};
        bool limbShare{};
        bool lionTail{};
        std::function<bool(const Tree&)> crown;
        bool anyWillDo{};
    };
    [[nodiscard]] Limits limits(const std::vector<Rule>& without) const;
    struct Found {
        Choice choice;
        std::vector<std::size_t> tails; ///< limbs that it may not leave as lion's tails
        /// True if there is one among them whose end was left out.
        [[nodiscard]] bool mayHelp(const std::vector<bool>& ends) const
        {
            return std::ranges::any_of(tails, [&](std::size_t limb) { return !ends[limb]; });
        }
    };
    [[nodiscard]] Choice leastWithin(const Limits& limits, const Targets& targets) const;
    /// \param known  the best so far
    [[nodiscard]] Found leastOf(const Limits& limits, const Targets& targets, const Wanted& wanted,
                                Choice known) const;
    [[nodiscard]] Choice likely(const Decisions& decisions) const;
    [[nodiscard]] bool accepts(const Tree& cut, const std::vector<Rule>& without) const;

    const Tree& tree_;
    const Foliation& foliation_;
    double allowance_;
    const std::atomic<bool>* cancel_;
    Effort effort_;
    CrownShape before_;
    std::vector<double> innerBefore_; ///< innerLeafShares()
};

} // namespace model::advice
