#pragma once

#include "model/crown/foliage.hpp"
#include "model/load/conditions.hpp"
#include "model/species/species.hpp"

namespace model::load {

/// Glaze, the clear ice of freezing rain, is no lighter than this, kg/m3: ASCE 7-16, 10.4.1
/// (56 lb/ft3).
inline constexpr double kGlaze_kg_m3 = 900.0;

/// Rain that clings to leaf and twigs after a good shower, kg per m2 of leaf area (of the leaf that
/// is there in summer, in winter too) (L24).
[[nodiscard]] double rainPerLeafArea_kg_m2(WoodClass wood, bool inLeaf);

/// Glaze of a radial thickness on a round bar, kg for each metre of it (L25).
[[nodiscard]] double glazeOnBar_kg_m(double diameter_m, double glaze_m);

/// Glaze on leaf and twigs, kg per m2 of the leaf area that is there in summer: what covers them
/// all round, less what twigs above keep from falling on those below (L26).
/// \throws std::domain_error  on a thickness that is negative or not finite
[[nodiscard]] double glazePerLeafArea_kg_m2(const Species& species, const Foliation& foliation,
                                            bool inLeaf, double glaze_m);

/// Strength of wood under a load that stays, over that in a test of some minutes (L27).
/// \param days  > 0
[[nodiscard]] double durationFactor(double days);

/// The factor of (L27) for a limb that bears these by its weight alone, without a gust: that of the
/// load that stays longest; 1 for none.
[[nodiscard]] double standingFactor(bool fruit, bool rain, bool ice);

} // namespace model::load
