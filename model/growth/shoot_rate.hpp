#pragma once

#include "model/garden/place.hpp"
#include "model/garden/tree.hpp"
#include "model/species/species.hpp"

namespace model::growth {

/// Part of their yearly extension by which leafy twigs that don't hang bring the underside of a
/// crown down, by growth and by their weight (G2). Assumed.
inline constexpr double kUndersideShare = 1.0 / 3.0;

/// How much a limb's underside comes down for each metre that its shoots grow: 1 for hanging
/// shoots, 0 for a limb without leaf.
[[nodiscard]] double undersideShare(const Limb& limb);
/// The same of a whole tree: 1 if any of its shoots hang.
[[nodiscard]] double undersideShare(const Tree& tree);

/// How much the shoots of one tree grow in a year, m: a normal distribution.
struct ShootRate {
    double mean_m{};
    double spread_m{};      ///< standard deviation, from one year to another included
    double speciesMean_m{}; ///< what the species tables alone would say
    int measurements{};     ///< in the diary, that have moved it
};

/// The species' range, moved by the tree's vigour and by what was cut (G2), then pulled towards the
/// headroom and the tips that the diary measured between visits (G3).
/// \param leafTaken  share of the tree's leaf that the cut in question takes, 0..1
[[nodiscard]] ShootRate shootRate(const Tree& tree, const Species& species, const Place& place,
                                  double leafTaken);

} // namespace model::growth
