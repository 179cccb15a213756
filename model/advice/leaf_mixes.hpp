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

/// Leaf of one limb, among others at one place.
struct LeafPart {
    std::uint32_t pattern{}; ///< which LeafSpan
    float density{};
    friend auto operator<=>(const LeafPart&, const LeafPart&) = default;
};
/// Leaf of several limbs at one place; tens of stretches of rays meet the same.
using LeafMix = std::vector<LeafPart>;

/// How much of a ray's depth of leaf sets of cuts can take where it meets one mix of limbs or
/// another, for each metre of depth at medium density (docs/methods/advice.md, A6).
class LeafMixes {
public:
    /// What a part of the mix gives when it goes, by level.
    struct Claim {
        std::uint32_t pattern{};
        PerLevel gone{};
    };
    /// What a limb gives, all its parts together.
    struct Give {
        std::size_t limb{};
        double most{};
        double rate{}; ///< at most for each share of leaf
    };

    /// \param likely  per limb: how much of its leaf is thought to go: bounds are closest for sets
    ///                like that; empty: not known
    LeafMixes(KeptLevels levels, std::vector<LeafSpan> spans, std::vector<double> likely,
              const std::vector<LeafMix>& mixes);

    [[nodiscard]] const KeptLevels& levels() const { return levels_; }
    [[nodiscard]] const LeafSpan& span(std::uint32_t pattern) const { return spans_[pattern]; }
    [[nodiscard]] std::size_t patterns() const { return spans_.size(); }
    [[nodiscard]] std::size_t size() const { return ranges_.size(); }
    /// Of what is thought to go, is anything known?
    [[nodiscard]] bool knowsLikely() const { return !likely_.empty(); }
    /// 0 if nothing is known.
    [[nodiscard]] double likely(std::size_t limb) const
    {
        return likely_.empty() ? 0.0 : likely_[limb];
    }

    /// The depth that may stand there at most.
    [[nodiscard]] double depth(std::size_t mix) const { return ranges_[mix].depth; }
    [[nodiscard]] std::span<const Claim> claims(std::size_t mix) const
    {
        const auto& range = ranges_[mix];
        return std::span(claims_).subspan(range.firstClaim, range.claims);
    }
    [[nodiscard]] std::span<const Give> gives(std::size_t mix) const
    {
        const auto& range = ranges_[mix];
        return std::span(gives_).subspan(range.firstGive, range.gives);
    }

private:
    struct Range {
        double depth{};
        std::size_t firstClaim{};
        std::size_t claims{};
        std::size_t firstGive{};
        std::size_t gives{};
    };
    /// Leaf that may stand at the place at hand.
    struct Stand {
        std::uint32_t pattern{};
        double density{};
        double high{}; ///< density at most
        std::size_t claim{};
    };
    void add(const LeafMix& mix);
    void shareEvenly(double depth);
    void shareLayers(double floor);
    void give(std::size_t limb, double most, double rate);
    [[nodiscard]] double leastLikely(double high) const;
    [[nodiscard]] double weights(double high, double last) const;

    KeptLevels levels_;
    std::vector<LeafSpan> spans_;
    std::vector<double> likely_;
    std::vector<Range> ranges_; ///< by mix
    std::vector<Claim> claims_;
    std::vector<Give> gives_;
    std::vector<Stand> stands_; ///< of the mix at hand
};

} // namespace model::advice
