#pragma once

#include "model/load/governing.hpp"
#include "model/load/limb_load.hpp"
#include "model/load/weak_place.hpp"

#include <array>
#include <cstddef>
#include <map>
#include <vector>

namespace model::load {

/// What is not known well when a limb's breaking gust is reckoned.
enum class Unknown {
    strength, ///< of this limb's wood and union against the mean of tests
    diameter, ///< by how it was measured
    leaf,     ///< how much leaf the tree bears against its species' mean
    drag,     ///< how hard wind pulls at that leaf
    wind,     ///< what of the forecast's gust arrives here
};
inline constexpr std::size_t kUnknowns = 5;

/// Gusts beyond this are not told apart, m/s: no forecast names them.
inline constexpr double kGreatestGust_m_s = 80.0;

/// A gust that every garden meets several times a year, m/s: a limb that is there today has stood
/// through it. Assumed.
inline constexpr double kStoodThrough_m_s = 15.0;

/// The 3-second gust at 10 m over open ground, as forecasts give it, in which a limb is likely to
/// break: a range, for nobody knows it better.
struct BreakingGust {
    std::size_t limb{}; ///< index into Tree::limbs
    double p10_m_s{};   ///< one in ten such limbs would break below this
    double p50_m_s{};   ///< half of them
    double p90_m_s{};   ///< nine in ten; kGreatestGust_m_s: that or more
    /// Share of the draws in which the limb, without crop, rain or ice, stands in
    /// kStoodThrough_m_s as it was drawn, and bears half of its crop in still air. The others can't
    /// be this limb and are left out. A small share says that the drawing is doubtful: too thin, or
    /// too leafy.
    double stood{1.0};
    bool hasStrength{true};                ///< false: dead or cracked wood, all gusts are 0
    std::array<double, kUnknowns> share{}; ///< of the range's variance, by Unknown; sums to 1
};

/// What a gardener could measure that would narrow the range most: diameter or leaf.
[[nodiscard]] Unknown worthMeasuring(const BreakingGust& gust);

/// Breaking gusts of every limb (the trunk too), from `samples` draws of what is unknown (L22,
/// L23). The draws are a fixed quasi-random sequence: the same input gives the same answer.
///
/// \param conditions  gust_m_s is not used
/// \throws std::domain_error  on a tree that validate() refuses, or no samples
[[nodiscard]] std::vector<BreakingGust> breakingGusts(const Tree& tree, const Foliation& foliation,
                                                      const Species& species, const Place& place,
                                                      Exposure exposure,
                                                      const Conditions& conditions,
                                                      std::size_t samples = 512);

/// The wind that drags are first reckoned for, m/s; results don't hang on it.
inline constexpr double kReferenceGust_m_s = 30.0;

/// How and when a limb breaks if every unknown is at its middle.
struct MiddleBreak {
    Governing at{};    ///< where, and in what wind
    double times{};    ///< of the drag at the reference gust
    double gust_m_s{}; ///< beyond kGreatestGust_m_s: not told apart
    double perGust{};  ///< how many more times for each m/s of gust, there
    bool breaks{};     ///< false: no strength to lose, weight alone does it, or no gust does
};

/// The limbs of one tree as gusts break them, one by one.
/// \pre  `tree` and `load`, which is its load case at the reference gust, outlive it
class BreakingLimbs {
public:
    BreakingLimbs(const Tree& tree, const LoadCase& load, const Species& species,
                  Exposure exposure);
    [[nodiscard]] MiddleBreak middle(std::size_t limb) const;

private:
    friend class GustRanges;
    const Tree* tree_;
    const LoadCase* load_;
    DragGroup dragGroup_;
    Exposure exposure_;
    std::vector<Weights> ofLimbs_;
    std::vector<double> leafParts_;
};

/// Ranges of breaking gusts, the draws worked out once for as many limbs and trees as one likes.
class GustRanges {
public:
    /// \throws std::domain_error  on no samples
    explicit GustRanges(const Species& species, std::size_t samples = 512);
    [[nodiscard]] BreakingGust of(const BreakingLimbs& limbs, std::size_t limb);

private:
    /// Standard deviations of the logarithm.
    struct Spreads {
        double strength{};
        double diameter{};
        friend auto operator<=>(const Spreads&, const Spreads&) = default;
    };
    using Points = std::vector<std::array<double, kUnknowns>>; ///< standard normal deviates
    [[nodiscard]] Spreads spreads(const Limb& limb) const;
    [[nodiscard]] const Draws& draws(const Spreads& spreads);

    bool ownStrength_;
    Points points_;
    std::map<Spreads, Draws> draws_; ///< the same for all limbs that are known as well
};

} // namespace model::load
