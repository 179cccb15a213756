#pragma once

#include "model/advice/search.hpp"

#include <cstddef>
#include <cstdint>
#include <limits>
#include <vector>

namespace model::advice {

/// Decisions laid out in rows, for sums that are taken ten thousand times in a search.
class ChoiceTree {
public:
    /// \param decisions  outlives this
    explicit ChoiceTree(const Decisions& decisions);

    [[nodiscard]] std::size_t limbs() const { return first_.size() - 1; }
    [[nodiscard]] std::size_t options() const { return limbOf_.size(); }
    [[nodiscard]] std::size_t first(std::size_t limb) const { return first_[limb]; }
    [[nodiscard]] std::size_t limbOf(std::size_t option) const { return limbOf_[option]; }
    [[nodiscard]] const Option& option(std::size_t index) const
    {
        return decisions_.options[limbOf_[index]][index - first_[limbOf_[index]]];
    }

    /// Least sum of costs of each limb with all that it leaves open, tips first; kNever where
    /// nothing is allowed.
    void leastSums(const PerOption& cost, const Allowed& allowed, std::vector<double>& least) const;
    /// The options of the cheapest complete choice, root first. \param least  from leastSums()
    void cheapest(const PerOption& cost, const Allowed& allowed, const std::vector<double>& least,
                  std::vector<std::uint32_t>& chosen) const;
    /// The option of one limb that is cheapest with all that it leaves open; the first of the limb
    /// if none can be taken. \param least  from leastSums()
    [[nodiscard]] std::size_t best(std::size_t limb, const PerOption& cost,
                                   const std::vector<double>& least) const;
    /// The least sum of any complete choice that takes each option.
    void leastThrough(const PerOption& cost, const Allowed& allowed,
                      const std::vector<double>& least, PerOption& through) const;

    static constexpr double kNever = std::numeric_limits<double>::infinity();

private:
    [[nodiscard]] double sum(std::size_t option, double cost,
                             const std::vector<double>& least) const
    {
        for (std::size_t i = opens_[option]; i < opens_[option + 1]; ++i)
            cost += least[opened_[i]];
        return cost;
    }

    const Decisions& decisions_;
    std::vector<std::size_t> first_;     ///< per limb, and the end
    std::vector<std::size_t> limbOf_;    ///< per option
    std::vector<std::size_t> opens_;     ///< per option, into opened_, and the end
    std::vector<std::size_t> opened_;    ///< limbs
    std::vector<std::size_t> tipsFirst_; ///< every limb after all that it can leave open
};

} // namespace model::advice
