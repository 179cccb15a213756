#include "model/crown/sketch_check.hpp"

#include "model/crown/mass.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model {
namespace {

constexpr double kThinnest_m = 0.05; // of the trees behind C7

// Open-grown trees weigh less than forest trees of their girth: Nowak 1994 (C6).
constexpr double kOpenGrown = 0.8;

// No group's fit is believed closer than that of mixed hardwoods: those of few species are
// narrower than the trees of a garden.
constexpr double kLeastBiomassSpread = 0.3605;

constexpr double kOrchardStem_m = 0.20; // the thickest of the orchard trees is 18.5 cm

constexpr double kLeafDry_kg_m2 = 0.075; // (C3)

// Dry leaf per area scatters between species from 33 to 90 g/m2 (C3), 0.25 of its logarithm.
constexpr double kLeafPerAreaSpread = 0.25;

/// The logarithm of a figure over the stem's diameter in cm: a + b ln d, and its scatter.
struct LogFit {
    double a{};
    double b{};
    double spread{};
};

// Least squares over the 149 trees of tests/published/urban-trees.csv (C7).
constexpr LogFit kLeafArea{-0.2533, 1.5433, 0.6025};
constexpr LogFit kCrownSpread{-0.3476, 0.7157, 0.1875};
constexpr const char* kUrban = "McPherson, van Doorn & Peper 2016";

Plausible plausible(double drawn, double expected, double spread, const char* source)
{
    const double reach = std::exp(2.0 * spread);
    return {drawn, expected, expected / reach, expected * reach, source};
}

Plausible plausible(double drawn, const LogFit& fit, double diameter_cm)
{
    return plausible(drawn, std::exp(fit.a + fit.b * std::log(diameter_cm)), fit.spread, kUrban);
}

double dryWood_kg(const Tree& tree, const Foliation& foliation, const Species& species)
{
    const double dryPerGreen =
        1000.0 * species.wood.basicSpecificGravity.value / species.wood.limbDensity_kg_m3.value;
    double green_kg = 0.0;
    for (const auto& mass : limbMasses(tree, foliation, species, false))
        green_kg += mass.wood_kg + mass.twig_kg;
    return green_kg * dryPerGreen;
}

Plausible dryMass(double drawn_kg, double diameter_cm, const Species& species)
{
    if (species.practice.role == "fruit" && diameter_cm <= 100.0 * kOrchardStem_m)
        return plausible(drawn_kg,
                         1e-3 * std::pow(10.0, -0.6587) * std::pow(10.0 * diameter_cm, 2.3705),
                         0.214 * std::numbers::ln10, "Brym & Ernest 2013");
    const auto fit = biomassFit(species.wood.biomassGroup);
    return plausible(drawn_kg, kOpenGrown * std::exp(fit.b0 + fit.b1 * std::log(diameter_cm)),
                     std::max(fit.spread, kLeastBiomassSpread), "Jenkins et al. 2003; Nowak 1994");
}

Plausible leafMass(double drawn_kg, double expected_m2)
{
    return plausible(drawn_kg, kLeafDry_kg_m2 * expected_m2,
                     std::hypot(kLeafArea.spread, kLeafPerAreaSpread),
                     "McPherson, van Doorn & Peper 2016; Martin et al. 1998");
}

/// How many standard deviations a figure lies above what is expected.
double above(const Plausible& figure)
{
    return 2.0 * std::log(figure.drawn / figure.expected) / std::log(figure.high / figure.expected);
}

/// A narrow crown is this species' own habit.
bool growsNarrow(const Species& species)
{
    const auto& habit = species.practice.crownHabit;
    return habit.find("column") != std::string::npos ||
           habit.find("conical") != std::string::npos ||
           habit.find("narrow") != std::string::npos || habit.find("upright") != std::string::npos;
}

std::vector<SketchCause> causes(const SketchCheck& check, const Species& species)
{
    const double mass = above(check.dryMass_kg);
    const double crown = above(check.crownSpread_m);
    const double leaf = above(check.leafArea_m2);
    const bool narrow = crown < -2.0 && !growsNarrow(species);
    std::vector<SketchCause> found;
    if (std::max(mass, crown) > 2.0 && std::min(mass, crown) > 1.0)
        found.push_back(SketchCause::girthSmall);
    else if ((mass < -2.0 || narrow) && std::max(mass, crown) < -1.0)
        found.push_back(SketchCause::girthLarge);
    else {
        if (std::abs(mass) > 2.0)
            found.push_back(mass > 0.0 ? SketchCause::limbsThick : SketchCause::limbsThin);
        if (crown > 2.0)
            found.push_back(SketchCause::crownWide);
        if (narrow)
            found.push_back(SketchCause::crownNarrow);
    }
    if (found.empty() && std::abs(leaf) > 2.0)
        found.push_back(leaf > 0.0 ? SketchCause::leafDense : SketchCause::leafSparse);
    return found;
}

} // namespace

BiomassFit biomassFit(BiomassGroup group)
{
    switch (group) { // (C6)
    case BiomassGroup::cedarLarch:
        return {-2.0336, 2.2592, 0.2946};
    case BiomassGroup::douglasFir:
        return {-2.2304, 2.4435, 0.2187};
    case BiomassGroup::firHemlock:
        return {-2.5384, 2.4814, 0.1823};
    case BiomassGroup::pine:
        return {-2.5356, 2.4349, 0.2538};
    case BiomassGroup::spruce:
        return {-2.0773, 2.3323, 0.2504};
    case BiomassGroup::aspenWillow:
        return {-2.2094, 2.3867, 0.5074};
    case BiomassGroup::mapleBirch:
        return {-1.9123, 2.3651, 0.4917};
    case BiomassGroup::hardMapleOak:
        return {-2.0127, 2.4342, 0.2365};
    case BiomassGroup::woodland:
        return {-0.7152, 1.7029, 0.3843};
    case BiomassGroup::mixedHardwood:
        break;
    }
    return {-2.4800, 2.4835, 0.3605};
}

std::optional<SketchCheck> checkSketch(const Tree& tree, const Foliation& foliation,
                                       const Species& species)
{
    SketchCheck check;
    check.stemDiameter_m = stemDiameter_m(tree);
    if (check.stemDiameter_m < kThinnest_m || foliation.leafArea_m2 <= 0.0)
        return std::nullopt;
    const double diameter_cm = 100.0 * check.stemDiameter_m;
    const double leaf_kg = kLeafDry_kg_m2 * foliation.leafArea_m2;
    check.dryMass_kg =
        dryMass(dryWood_kg(tree, foliation, species) + leaf_kg, diameter_cm, species);
    check.leafArea_m2 = plausible(foliation.leafArea_m2, kLeafArea, diameter_cm);
    check.leafMass_kg = leafMass(leaf_kg, check.leafArea_m2.expected);
    check.crownSpread_m = plausible(2.0 * std::sqrt(foliation.crownArea_m2 / std::numbers::pi),
                                    kCrownSpread, diameter_cm);
    check.causes = causes(check, species);
    return check;
}

} // namespace model
