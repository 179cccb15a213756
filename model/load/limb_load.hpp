#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"
#include "model/load/conditions.hpp"
#include "model/species/species.hpp"

#include <vector>

namespace model::load {

/// Load on one limb, at the place along it and under the wind bearing that ask most of it.
/// The still-air load of a limb is that of gust 0.
struct LimbLoad {
    std::size_t limb{};     ///< index into Tree::limbs
    double mass_kg{};       ///< the limb and all that grows from it, green, with all it bears
    double props_N{};       ///< what props push up with, under this limb and what grows from it
    double wind_N{};        ///< drag on the same, governing bearing
    double governingAt_m{}; ///< along the limb from its union
    double governingBearing_deg{}; ///< the wind comes FROM here (as forecasts give it)
    double weightMoment_Nm{};      ///< bending by weight alone, at the governing place
    double windMoment_Nm{};        ///< bending by wind alone, at the governing place
    double moment_Nm{};            ///< bending by both (vector sum)
    double torsion_Nm{};           ///< about the limb's axis, by both
    double diameter_m{};           ///< at the governing place
    double stress_Pa{};            ///< greatest principal stress there
    double strength_Pa{}; ///< of this limb there: green strength x limb and union factors; 0
                          ///< where there is none
    /// Of the strength, left under what hangs for hours, days or weeks; below 1 where the weight by
    /// itself, for as long as it hangs, asks more than weight and gust together (L27): then the
    /// figures here are those of still air.
    double duration{1.0};
    double utilisation{};   ///< stress over strength; 1 = expected to fail, as a mean
    bool hasStrength{true}; ///< false: dead or cracked wood, which is given none. Its
                            ///< utilisation is that of sound wood, yet never below 1: a floor,
                            ///< not a figure to show
};

struct TreeLoad {
    std::vector<LimbLoad> limbs; ///< one for each limb, in Tree::limbs order
    double mass_kg{};            ///< above ground, green
    double wood_kg{};
    double leaf_kg{};
    double twig_kg{};
    double fruit_kg{};
    double rain_kg{};       ///< on leaf and twigs
    double ice_kg{};        ///< on wood, leaf and twigs
    double gustAtTop_m_s{}; ///< after terrain and height
    double baseMoment_Nm{}; ///< at the ground, worst bearing
};

/// Loads on every limb of `tree`, the worst of all wind bearings (every 10 degrees).
///
/// Method and sources: docs/methods/load.md.
/// \param tree       may have been cut since `foliation` was worked out for the sketch
/// \throws std::domain_error  on a tree that validate() refuses
[[nodiscard]] TreeLoad treeLoad(const Tree& tree, const Foliation& foliation,
                                const Species& species, const Place& place, Exposure exposure,
                                const Conditions& conditions);

} // namespace model::load
