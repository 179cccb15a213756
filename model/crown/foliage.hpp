#pragma once

#include "model/crown/leafy_bodies.hpp"
#include "model/geometry/ellipsoid.hpp"
#include "model/species/species.hpp"

#include <string>
#include <vector>

namespace model {

/// Leaf of a whole tree as it was sketched. Worked out once per sketch and then kept: cutting a
/// limb takes its leaf away and leaves the others' alone.
///
/// leaf area = crown LAI of the species x the crown's area on plan (docs/methods/crown.md, C1);
/// shared among the bodies in proportion to sharing volume x relative density (C2).
struct Foliation {
    double leafArea_m2{};              ///< one-sided, whole tree
    double leafPerSharingVolume_1_m{}; ///< leaf area per sharing volume at medium density
    double leafAreaDensity_1_m{};      ///< leaf area per m3 of the union of the bodies, for light
    double crownArea_m2{};             ///< on plan, union of the bodies
    double crownVolume_m3{};           ///< union of the bodies
    double outlineArea_m2{};           ///< union of the bodies from the side where it is largest
    std::string laiSource;             ///< key into trees/sources.csv
    Evidence laiEvidence{};
};

/// \param species  blank LAI: the survey median of all species is used and says so.
[[nodiscard]] Foliation foliate(const Tree& sketch, const Species& species);

/// The same for a crown that is drawn as one body: leaf area density LAI x area on plan / volume.
[[nodiscard]] Foliation foliate(const Ellipsoid& crown, const Species& species);

/// The crown as seen from above and, where it is largest, from the side.
struct CrownAreas {
    double plan_m2{};
    double outline_m2{};
};

/// Directions from which the crown is looked at for its largest outline.
inline constexpr double kOutlineStep_deg = 10.0;

/// The leaf of a crown whose areas and volume are known. \param bodies  none: no leaf at all
[[nodiscard]] Foliation leafOf(const Species& species, const std::vector<LeafyBody>& bodies,
                               const CrownAreas& areas, double crownVolume_m3);

/// Leaf area of one body, m2.
[[nodiscard]] double leafArea_m2(const LeafyBody& body, const Foliation& foliation);

/// Leaf area per limb (its own, without the limbs that grow from it), m2.
[[nodiscard]] std::vector<double> leafAreaByLimb_m2(const Tree& tree, const Foliation& foliation);

/// Masses that hang on a leafy body, kg green.
struct LeafyMass {
    double leaf_kg{};
    double twig_kg{}; ///< shoots too fine to draw
};

/// Leaf and twig mass per m2 of leaf (docs/methods/crown.md, C3 and C4).
[[nodiscard]] LeafyMass leafyMassPerArea(const Species& species);

} // namespace model
