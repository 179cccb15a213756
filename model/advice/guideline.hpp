#pragma once

#include "model/advice/crown_shape.hpp"
#include "model/advice/rule.hpp"
#include "model/advice/search.hpp"
#include "model/advice/targets.hpp"

#include <atomic>
#include <optional>

namespace model::advice {

/// One tree and what the guideline lets be taken of it: answers "what is the least leaf for this?".
class Guideline {
public:
    /// \param allowance  share of the tree's leaf that may go
    /// \param nodesMost  partial choices that one search looks at before it gives up
    Guideline(const Tree& tree, const Foliation& foliation, double allowance,
              const std::atomic<bool>* cancel, long nodesMost = Decisions{}.nodesMost);

    /// \param without  a rule left out of account, to see whether it is the one that binds
    [[nodiscard]] Choice least(const Targets& targets,
                               std::optional<Rule> without = std::nullopt) const;

    /// The least leaf for the targets if no rule stood in the way; 0 if nothing reaches them.
    [[nodiscard]] double leastWithoutAny(const Targets& targets) const;

    /// The rules without which the targets could be reached, with the share that would take.
    [[nodiscard]] std::vector<Finding> binding(const Targets& targets) const;

private:
    [[nodiscard]] bool accepts(const CrownShape& after, std::optional<Rule> without) const;

    const Tree& tree_;
    const Foliation& foliation_;
    double allowance_;
    const std::atomic<bool>* cancel_;
    long nodesMost_;
    CrownShape before_;
};

} // namespace model::advice
