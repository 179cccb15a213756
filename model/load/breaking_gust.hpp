#pragma once

#include "model/load/limb_load.hpp"

#include <array>
#include <cstddef>
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
    /// kStoodThrough_m_s as it was drawn. The others can't be this limb and are left out. A small
    /// share says that the drawing is doubtful: too thin, or too leafy.
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

} // namespace model::load
