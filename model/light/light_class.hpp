#pragma once

#include "model/species/species.hpp"

namespace model::light {

/// Gardeners' words for direct sun a day in the growing season.
enum class LightClass {
    fullSun,   ///< 6 h and more
    partSun,   ///< 4 to 6 h
    partShade, ///< 2 to 4 h
    fullShade, ///< under 2 h
};

/// Penn State Extension's four classes, as garden pages relay them (docs/methods/light.md, L25).
[[nodiscard]] LightClass lightClass(double sun_h);

/// How a place suits a plant.
enum class Suits {
    well,     ///< enough for good growth
    barely,   ///< more than the least it lives with
    tooDark,  ///< less than the least
    notKnown, ///< the table has no figure for this plant
};

/// By hours of direct sun, and by the daily light integral too where the table has one: the worse
/// of the two counts.
[[nodiscard]] Suits suits(const Plant& plant, double sun_h, double dli_mol);

} // namespace model::light
