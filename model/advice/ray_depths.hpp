#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace model::advice {

/// Shares of its shoots that may stay on a limb: all, all but each step of thinning, none.
struct KeptLevels {
    static constexpr std::size_t kMost = 8;
    std::vector<double> kept{1.0, 0.0}; ///< the last: none

    void add(double share);
    /// The level at which no more than this stays.
    [[nodiscard]] std::size_t of(double share) const;
    [[nodiscard]] std::size_t none() const { return kept.size() - 1; }
};
using PerLevel = std::array<double, KeptLevels::kMost>;

/// Leaf of a limb that is there in some of its forms: what sets of cuts may leave of it.
struct LeafSpan {
    std::size_t limb{};
    double own{};     ///< leaf of the limb, in some unit: for its share of what goes
    double most{};    ///< share of its shoots that may stay
    double least{};   ///< that stays whatever is done
    double perLeaf{}; ///< the greatest share of it that goes for leaf of the limb
    bool inAll{};     ///< every form of the limb has it

    [[nodiscard]] double fade() const { return most > least ? most - least : 0.0; }
};

/// Leaf of one limb on a stretch of a ray.
struct LeafPart {
    std::uint32_t pattern{}; ///< which LeafSpan
    float density{};
};

/// How much depth of leaf sets of cuts can take from one ray after the other, and at most how much
/// light that gives (docs/methods/advice.md, A6).
class RayDepths {
public:
    /// \param leafLeft  that sets of cuts may take, share of the tree's
    /// \param likely    per limb: how much of its leaf is thought to go: bounds are closest for
    /// sets
    ///                  like that; empty: not known
    RayDepths(KeptLevels levels, std::vector<LeafSpan> spans, double leafLeft,
              std::vector<double> likely, std::size_t limbs);

    [[nodiscard]] const KeptLevels& levels() const { return levels_; }
    [[nodiscard]] double leafLeft() const { return leafLeft_; }
    /// 0 if nothing is known.
    [[nodiscard]] double likely(std::size_t limb) const
    {
        return likely_.empty() ? 0.0 : likely_[limb];
    }

    void startRay();
    /// Shares what may go on a stretch among the limbs there. \return the depth that may stand
    /// there
    double addStretch(double depth, std::span<const LeafPart> parts);
    /// The most depth that can go from the ray.
    [[nodiscard]] double mostGone();
    /// Adds at most what the ray gains by pattern and level, if so much light is sure on it.
    void addGains(double sure, double mostGone, std::vector<PerLevel>& gained);

private:
    /// Leaf that may stand on the stretch at hand.
    struct Stand {
        std::uint32_t pattern{};
        const LeafSpan* span{};
        double density{};
        double high{}; ///< density at most
        std::size_t claim{};
    };
    /// What a part of the ray gives of its depth, by level.
    struct Claim {
        std::uint32_t pattern{};
        PerLevel gone{};
    };
    /// Of a limb on the ray.
    struct Item {
        std::size_t limb{};
        double most{}; ///< depth that it can give
        double rate{}; ///< at most for each share of leaf
        PerLevel byLevel{};
    };
    Claim& claim(std::uint32_t pattern);
    Item& item(std::size_t limb);
    void shareEvenly(double depth);
    void shareLayers(double depth, double floor);
    [[nodiscard]] double leastLikely(double high) const;
    [[nodiscard]] double weights(double high, double last) const;
    void findSlopes(double mostGone);
    void sumUpLevels();
    [[nodiscard]] double gain(double mostGone, bool inTurn) const;
    [[nodiscard]] double slopeAfter(double before, double mostGone, double depth) const;

    KeptLevels levels_;
    std::vector<LeafSpan> spans_;
    double leafLeft_;
    std::vector<double> likely_;
    // Of the ray at hand:
    std::vector<Item> items_;
    std::vector<std::size_t> itemOf_; ///< per limb: its item and one; 0: none
    std::vector<Claim> claims_;
    std::size_t claimed_{};
    std::vector<Stand> stands_;
    std::vector<PerLevel> slopes_; ///< per item: light for depth, as a share of what is sure
};

} // namespace model::advice
