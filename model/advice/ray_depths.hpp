#pragma once

#include "model/advice/leaf_mixes.hpp"

#include <cstddef>
#include <vector>

namespace model::advice {

/// How much depth of leaf sets of cuts can take from one ray after the other, and at most how much
/// light that gives (docs/methods/advice.md, A6).
class RayDepths {
public:
    /// \param mixes     that the rays go through; they outlive this
    /// \param leafLeft  that sets of cuts may take, share of the tree's
    RayDepths(const LeafMixes& mixes, double leafLeft, std::size_t limbs);

    void startRay();
    /// \return the depth that may stand there
    double addStretch(double depth, std::size_t mix);
    /// The most depth that can go from the ray.
    [[nodiscard]] double mostGone();
    /// Adds at most what the ray gains, if so much light is sure on it.
    void addGains(double sure, double mostGone);
    /// By pattern and level, at most what all rays gain.
    [[nodiscard]] std::vector<PerLevel> gained() const;

private:
    struct Stretch {
        double depth{};
        std::size_t mix{};
    };
    /// Of a limb on the ray.
    struct Item {
        std::size_t limb{};
        double most{}; ///< depth that it can give
        double rate{}; ///< at most for each share of leaf
        PerLevel byLevel{};
    };
    Item& item(std::size_t limb);
    [[nodiscard]] bool goesInTurn(double mostGone);
    void findSlopes(double mostGone);
    void sumUpLevels();
    [[nodiscard]] double gain(double mostGone, bool inTurn) const;
    [[nodiscard]] double slopeAfter(double before, double mostGone, double depth) const;

    const LeafMixes& mixes_;
    double leafLeft_;
    std::vector<double> allAtOnce_;  ///< per mix: what its depth gains on rays of one slope
    std::vector<PerLevel> oneByOne_; ///< per pattern: on the others
    // Of the ray at hand:
    std::vector<Stretch> stretches_;
    std::vector<Item> items_;
    std::vector<std::size_t> itemOf_; ///< per limb: its item and one; 0: none
    std::vector<PerLevel> slopes_;    ///< per item: light for depth, as a share of what is sure
};

} // namespace model::advice
