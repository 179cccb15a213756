#include "model/load/weather.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace model::load {
namespace {

// Depth of water on leaf, mm = kg/m2. L24 weighs the tests; twigs alone hold a tenth.
constexpr double kFilmOnBroadleaf_kg_m2 = 0.5;
constexpr double kFilmOnConifer_kg_m2 = 1.0;
constexpr double kLeaflessShare = 0.1;

// Twigs too fine to draw, from 2 to 20 mm, as one bar that takes as much ice for its mass (L26).
constexpr double kTwigDiameter_m = 0.007;

// ASCE 7-16, 10.4.1: ice on a level plate is 0.6 of pi x thickness x area of one side.
constexpr double kLevelPlate = 0.6;

// How long the greatest load stays, days (L27): fruit for the two months that timber codes give to
// snow, ice for a day, water on leaves for the quarter of a day that a rain lasts. Assumed.
constexpr double kFruit_days = 60.0;
constexpr double kIce_days = 1.0;
constexpr double kRain_days = 0.25;

} // namespace

double rainPerLeafArea_kg_m2(WoodClass wood, bool inLeaf)
{
    const double film = wood == WoodClass::conifer ? kFilmOnConifer_kg_m2 : kFilmOnBroadleaf_kg_m2;
    return inLeaf ? film : kLeaflessShare * film; // (L24)
}

double glazeOnBar_kg_m(double diameter_m, double glaze_m)
{
    return kGlaze_kg_m3 * std::numbers::pi * glaze_m * (diameter_m + glaze_m); // (L25)
}

double glazePerLeafArea_kg_m2(const Species& species, const Foliation& foliation, bool inLeaf,
                              double glaze_m)
{
    if (!(glaze_m >= 0.0) || !std::isfinite(glaze_m))
        throw std::domain_error("glaze: the thickness must be finite and not negative");
    if (foliation.leafArea_m2 <= 0.0)
        return 0.0;
    const double twigSection = std::numbers::pi / 4.0 * kTwigDiameter_m * kTwigDiameter_m;
    const double twig_m_m2 =
        leafyMassPerArea(species).twig_kg / (species.wood.limbDensity_kg_m3.value * twigSection);
    const double onTwigs = twig_m_m2 * glazeOnBar_kg_m(kTwigDiameter_m, glaze_m);
    const double level = kGlaze_kg_m3 * std::numbers::pi * glaze_m; // falls on a level m2, no wind
    const double onLeaf = inLeaf ? kLevelPlate * level : 0.0;
    const double falls = level * foliation.crownArea_m2 / foliation.leafArea_m2;
    if (falls <= 0.0)
        return 0.0;
    return falls * -std::expm1(-(onTwigs + onLeaf) / falls); // (L26)
}

double durationFactor(double days)
{
    if (!(days > 0.0))
        throw std::domain_error("durationFactor: needs a time over 0");
    constexpr double kSeconds = 86400.0;
    const double percent = 108.4 / std::pow(days * kSeconds, 0.04635) + 18.3;
    return std::min(1.0, percent / 100.0); // (L27)
}

double standingFactor(bool fruit, bool rain, bool ice)
{
    double factor = 1.0;
    if (rain)
        factor = durationFactor(kRain_days);
    if (ice)
        factor = durationFactor(kIce_days);
    if (fruit)
        factor = durationFactor(kFruit_days);
    return factor;
}

} // namespace model::load
