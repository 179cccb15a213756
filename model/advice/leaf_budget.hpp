#pragma once

#include <cstddef>
#include <vector>

namespace model::advice {

/// The most of something that can be had for so much leaf, if each limb gives at most one of its
/// offers, or part of it: the fractional knapsack (Dantzig 1957, from memory), never less than what
/// whole offers give.
class LeafBudget {
public:
    static constexpr double kHair = 1e-9; ///< of the tree's leaf: as good as none

    explicit LeafBudget(double leaf) : leaf_(leaf) {}

    void clear() { items_.clear(); }
    /// \param leaf  that it costs; offers of one limb come one after the other
    void offer(std::size_t limb, double gain, double leaf);
    [[nodiscard]] double most();

private:
    struct Item {
        std::size_t limb{};
        double most{};
        double rate{}; ///< the best of its offers, for all the leaf
    };
    double leaf_;
    std::vector<Item> items_;
};

} // namespace model::advice
