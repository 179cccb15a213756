#include "model/load/strength.hpp"

#include "model/geometry/angle.hpp"

#include <algorithm>

namespace model::load {
namespace {

// A wall of 0.3 of the radius: where Mattheck & Breloer 1994 saw failures grow. Assumed for a
// hollow whose wall nobody measured.
constexpr double kAssumedWall = 0.30;

// A quarter of the circle; assumed for an opening that nobody measured.
constexpr double kAssumedOpening_deg = 90.0;

} // namespace

double unionFactor(Union kind, double aspectRatio)
{
    constexpr double kFull = 0.50;  // up to here a collar holds the limb as well as its own wood
    constexpr double kEqual = 0.83; // Dahle et al. 2022: no weaker beyond
    constexpr double kCodominant = 0.65;
    constexpr double kIncludedBark = 0.76; // Slater & Ennos 2015
    const double share = std::clamp((aspectRatio - kFull) / (kEqual - kFull), 0.0, 1.0);
    const double bySize = 1.0 - (1.0 - kCodominant) * share; // (L15)
    switch (kind) {
    case Union::sound:
        return bySize;
    case Union::codominant:
        return kCodominant;
    case Union::includedBark:
        break;
    }
    return bySize * kIncludedBark;
}

double aspectRatio(const Tree& tree, const LimbOrder& order, std::size_t limb)
{
    const auto parent = order.parent[limb];
    if (parent == kNoLimb)
        return 0.0;
    const auto& drawn = tree.limbs[limb];
    return drawn.stations.front().diameter_m /
           axisPoint(tree.limbs[parent], drawn.attachedAt_m).diameter_m;
}

double unionZone_m(const Limb& limb)
{
    return limb.parent ? limb.stations.front().diameter_m : 0.0;
}

Section sectionAt(const Defect& defect, double diameter_m)
{
    const double wall = defect.residualWall_m.value_or(kAssumedWall * diameter_m / 2.0);
    switch (defect.kind) {
    case DefectKind::cavity:
        return defect.thickestWall_m ? offCentreSection(diameter_m, wall, *defect.thickestWall_m)
                                     : hollowSection(diameter_m, wall);
    case DefectKind::openCavity:
        return openSection(diameter_m, wall,
                           radians(defect.opening_deg.value_or(kAssumedOpening_deg)));
    case DefectKind::crack:
    case DefectKind::dead:
    case DefectKind::broken:
    case DefectKind::rubbing:
        break;
    }
    return solidSection(diameter_m);
}

bool leavesStrength(DefectKind kind)
{
    return kind != DefectKind::crack && kind != DefectKind::dead && kind != DefectKind::broken;
}

} // namespace model::load
