#include "model/crown/foliage.hpp"

#include "model/crown/plan_outlines.hpp"
#include "model/crown/silhouette.hpp"
#include "model/crown/union_volume.hpp"

#include <algorithm>

namespace model {
namespace {

// Urban Tree Database, McPherson, van Doorn & Peper 2016: median of 11,117 street and park trees.
constexpr double kMedianCrownLai = 2.81;

// Dry leaf mass per leaf area: median of the whole trees cut at Coweeta (Martin et al. 1998, raw
// data in BAAD), species medians 33..90 g/m2, broadleaves; used for every species.
constexpr double kLeafDryMass_kg_m2 = 0.075;

// Dry matter of fresh leaves by mass, 0.35; from memory (leaf trait handbooks, range 0.2-0.45).
constexpr double kLeafDryShare = 0.35;

// Leaf over twig dry mass, 0.284: median of 81 tart cherry branches (Brym & Ernest 2012-13).
constexpr double kLeafPerTwigDryMass = 0.284;

// Spacing of the lines that measure the crown's volume: twigs drawn thinner than half a metre
// across the leaf add little to it and would cost much.
constexpr double kFinestLines_m = 0.06;

/// The largest outline of the crown that the wind can meet, m2.
double largestOutline_m2(const Tree& tree, const std::vector<LeafyBody>& bodies)
{
    const auto order = limbOrder(tree);
    const auto bearings = halfTurn_deg(kOutlineStep_deg);
    const Silhouettes silhouettes(tree, order, bodies, bearings);
    const auto all = order.children[order.trunk].size();
    double largest = 0.0;
    for (std::size_t i = 0; i < bearings.size(); ++i)
        largest = std::max(largest, silhouettes.visible(order.trunk, all, i).leaf_m2);
    return largest;
}

} // namespace

Foliation leafOf(const Species& species, const std::vector<LeafyBody>& bodies,
                 const CrownAreas& areas, double crownVolume_m3)
{
    Foliation result;
    result.laiEvidence =
        species.leaf.crownLai ? species.leaf.crownLai->evidence : Evidence::assumed;
    result.laiSource = species.leaf.crownLai ? species.leaf.crownLai->source : "UTD2016";
    if (bodies.empty())
        return result;
    double weighted = 0.0;
    double volume = 0.0;
    for (const auto& body : bodies) {
        weighted += sharingVolume_m3(body) * body.density;
        volume += sharingVolume_m3(body);
    }
    const double lai = species.leaf.crownLai ? species.leaf.crownLai->value : kMedianCrownLai;
    result.crownArea_m2 = areas.plan_m2;
    result.outlineArea_m2 = areas.outline_m2;
    result.crownVolume_m3 = crownVolume_m3;
    // A tree drawn all sparse carries less than its species' mean, one drawn all dense more.
    result.leafArea_m2 = lai * areas.plan_m2 * weighted / volume;
    result.leafPerSharingVolume_1_m = result.leafArea_m2 / weighted;
    if (crownVolume_m3 > 0.0)
        result.leafAreaDensity_1_m = lai * areas.plan_m2 / crownVolume_m3;
    return result;
}

Foliation foliate(const Tree& sketch, const Species& species)
{
    const auto bodies = leafyBodies(sketch);
    if (bodies.empty())
        return leafOf(species, bodies, {}, 0.0);
    double finest_m = bodies.front().solid.radius_m;
    for (const auto& body : bodies)
        finest_m = std::min(finest_m, body.solid.radius_m);
    return leafOf(species, bodies,
                  {area_m2(unite(planOutlines(bodies))), largestOutline_m2(sketch, bodies)},
                  unionVolume_m3(bodies, std::max(kFinestLines_m, finest_m / 8.0)));
}

Foliation foliate(const Ellipsoid& crown, const Species& species)
{
    Foliation result;
    result.laiEvidence =
        species.leaf.crownLai ? species.leaf.crownLai->evidence : Evidence::assumed;
    result.laiSource = species.leaf.crownLai ? species.leaf.crownLai->source : "UTD2016";
    const double lai = species.leaf.crownLai ? species.leaf.crownLai->value : kMedianCrownLai;
    result.crownArea_m2 = area_m2(projected(crown, {1.0, 0.0, 0.0}, {0.0, 1.0, 0.0}));
    result.crownVolume_m3 = volume_m3(crown);
    result.leafArea_m2 = lai * result.crownArea_m2;
    result.leafPerSharingVolume_1_m = result.leafArea_m2 / result.crownVolume_m3;
    result.leafAreaDensity_1_m = result.leafPerSharingVolume_1_m;
    return result;
}

double leafArea_m2(const LeafyBody& body, const Foliation& foliation)
{
    return foliation.leafPerSharingVolume_1_m * sharingVolume_m3(body) * body.density;
}

std::vector<double> leafAreaByLimb_m2(const Tree& tree, const Foliation& foliation)
{
    std::vector<double> areas(tree.limbs.size(), 0.0);
    for (const auto& body : leafyBodies(tree))
        areas[body.limb] += leafArea_m2(body, foliation);
    return areas;
}

LeafyMass leafyMassPerArea(const Species& species)
{
    const double gravity = species.wood.basicSpecificGravity.value;
    const double greenPerDry = species.wood.limbDensity_kg_m3.value / (1000.0 * gravity);
    return {kLeafDryMass_kg_m2 / kLeafDryShare,
            kLeafDryMass_kg_m2 / kLeafPerTwigDryMass * greenPerDry};
}

} // namespace model
