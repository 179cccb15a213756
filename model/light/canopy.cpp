#include "model/light/canopy.hpp"

#include "model/geometry/angle.hpp"
#include "model/light/leaf_angle.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace model::light {
namespace {

// Bare crowns let through 0.57 to 0.85 of the light where they were measured (L15).
constexpr double kBareTransmittance = 0.70;

// Leaves grow in sprays that hide behind each other. 0.8 brings the extinction of four hardwood
// stands, 0.53 to 0.67 per unit of LAI, out of their leaf angles (Vose et al. 1995; L12).
constexpr double kClumping = 0.8;

/// A stretch of a ray inside leaves.
struct LeafyStretch {
    double from{};
    double to{};
    double density{};
};

Ball ballAround(const Curtain& solid)
{
    const Vec3 middle = centre(solid);
    double reach = 0.0;
    for (const auto& corner : corners(solid))
        reach = std::max(reach, norm(corner - middle));
    return {middle, reach + solid.radius_m};
}

Ball ballAround(const Canopy& canopy)
{
    Vec3 sum{};
    double count = 0.0;
    const auto each = [&](const auto& visit) {
        for (const auto& body : canopy.leaves)
            visit(body.bounds);
        for (const auto& body : canopy.crowns)
            visit(body.bounds);
        for (const auto& body : canopy.wood)
            visit(body.bounds);
    };
    each([&](const Ball& ball) {
        sum += ball.middle_m;
        count += 1.0;
    });
    Ball whole{count > 0.0 ? (1.0 / count) * sum : Vec3{}, 0.0};
    each([&](const Ball& ball) {
        whole.radius_m =
            std::max(whole.radius_m, norm(ball.middle_m - whole.middle_m) + ball.radius_m);
    });
    return whole;
}

bool reaches(const Ball& ball, Vec3 from, Vec3 direction)
{
    const Vec3 ahead = ball.middle_m - from;
    const double along = dot(ahead, direction);
    return along > -ball.radius_m &&
           dot(ahead, ahead) - along * along < ball.radius_m * ball.radius_m;
}

Curtain moved(Curtain solid, Vec3 by)
{
    solid.a += by;
    solid.b += by;
    return solid;
}

double twigExtinction(const Foliation& foliation, const Species& species)
{
    if (!(foliation.crownArea_m2 > 0.0))
        return 0.0;
    const auto& measured = species.leaf.transmittanceLeafOff;
    const double bare = measured ? measured->value : kBareTransmittance;
    // The ball with this crown's mean upright chord: volume over shadow is 4 r / 3.
    const double radius_m = 0.75 * foliation.crownVolume_m3 / foliation.crownArea_m2;
    return extinctionRadius(bare) / radius_m;
}

/// What a tree's leaves are like, whatever its bodies.
void finish(Canopy& canopy, const Foliation& foliation, const Species& species, double leafShare)
{
    canopy.leafAreaDensity_1_m = foliation.leafAreaDensity_1_m;
    canopy.twigExtinction_1_m = twigExtinction(foliation, species);
    canopy.leafAngleX = species.leaf.leafAngleX ? species.leaf.leafAngleX->value : kUsualLeafAngleX;
    canopy.clumping = kClumping;
    canopy.leafShare = leafShare;
    canopy.bounds = ballAround(canopy);
}

/// Total length of stretches in order of `from` whose density is at least `least`.
double unionLength(const std::vector<LeafyStretch>& ordered, double least)
{
    double length = 0.0;
    double reached = 0.0;
    for (const auto& part : ordered) {
        if (part.density < least)
            continue;
        length += std::max(0.0, part.to - std::max(part.from, reached));
        reached = std::max(reached, part.to);
    }
    return length;
}

/// Integral of the greatest density along the ray, layer by layer from the thinnest leaf up.
double densestPath(std::vector<LeafyStretch>& stretches)
{
    std::ranges::sort(stretches, {}, &LeafyStretch::from);
    double path = 0.0;
    double done = 0.0;
    while (true) {
        double layer = 0.0;
        for (const auto& part : stretches)
            if (part.density > done && (layer == 0.0 || part.density < layer))
                layer = part.density;
        if (layer == 0.0)
            return path;
        path += (layer - done) * unionLength(stretches, layer);
        done = layer;
    }
}

} // namespace

double extinctionRadius(double meanTransmittance)
{
    if (!(meanTransmittance > 0.0 && meanTransmittance < 1.0))
        throw std::domain_error("extinctionRadius: need a share between 0 and 1");
    // Falls steadily from 1 to 0 in x; below 1e-4 the closed form loses its figures.
    const auto mean = [](double x) {
        return x < 1e-4 ? 1.0 - 2.0 * x / 3.0 : 2.0 / (x * x) * (1.0 - (1.0 + x) * std::exp(-x));
    };
    double low = 0.0;
    double high = 2.0;
    while (mean(high) > meanTransmittance)
        high *= 2.0;
    for (int halving = 0; halving < 60; ++halving) {
        const double x = (low + high) / 2.0;
        (mean(x) > meanTransmittance ? low : high) = x;
    }
    return (low + high) / 4.0; // x = 2 k r
}

Canopy canopy(const Tree& tree, const Foliation& foliation, const Species& species,
              double leafShare, const Ground& ground)
{
    const Vec3 base = ground.at(tree.position_m);
    Canopy result;
    for (const auto& body : leafyBodies(tree)) {
        const Curtain solid = moved(body.solid, base);
        result.leaves.push_back({solid, body.density, body.limb, ballAround(solid)});
    }
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb)
        for (const auto& piece : woodSolids(tree.limbs[limb])) {
            const Curtain solid = moved(piece, base);
            result.wood.push_back({solid, limb, ballAround(solid)});
        }
    finish(result, foliation, species, leafShare);
    return result;
}

Ellipsoid crownOf(const Neighbour& neighbour, const Ground& ground)
{
    const double up_m = (neighbour.height_m - neighbour.crownBase_m) / 2.0;
    return uprightEllipsoid(ground.at(neighbour.position_m, neighbour.crownBase_m + up_m),
                            neighbour.bearing_deg, neighbour.spread_m / 2.0,
                            neighbour.across_m.value_or(neighbour.spread_m) / 2.0, up_m);
}

Canopy canopy(const Neighbour& neighbour, const Species& species, double leafShare,
              const Ground& ground)
{
    const Ellipsoid crown = crownOf(neighbour, ground);
    Canopy result;
    result.crowns.push_back(
        {crown, relativeDensity(neighbour.density), {crown.middle_m, reach_m(crown)}});
    if (neighbour.stemDiameter_m) {
        const Curtain stem{ground.at(neighbour.position_m), crown.middle_m,
                           *neighbour.stemDiameter_m / 2.0, 0.0};
        result.wood.push_back({stem, 0, ballAround(stem)});
    }
    finish(result, foliate(crown, species), species, leafShare);
    return result;
}

double extinction_1_m(const Canopy& canopy, Vec3 direction)
{
    const double zenith_deg = degrees(std::acos(std::clamp(direction.z, -1.0, 1.0)));
    return leafProjection(canopy.leafAngleX, zenith_deg) * canopy.leafAreaDensity_1_m *
               canopy.leafShare * canopy.clumping +
           canopy.twigExtinction_1_m;
}

std::optional<double> leafyPath_m(const Canopy& canopy, Vec3 from, Vec3 direction)
{
    if (!reaches(canopy.bounds, from, direction))
        return 0.0;
    for (const auto& body : canopy.wood)
        if (reaches(body.bounds, from, direction) && chord(body.solid, from, direction))
            return std::nullopt;
    thread_local std::vector<LeafyStretch> stretches; // kept, since most rays need a few entries
    stretches.clear();
    for (const auto& body : canopy.leaves)
        if (reaches(body.bounds, from, direction))
            if (const auto inside = chord(body.solid, from, direction))
                stretches.push_back({inside->from, inside->to, body.density});
    for (const auto& body : canopy.crowns)
        if (reaches(body.bounds, from, direction))
            if (const auto inside = chord(body.solid, from, direction))
                stretches.push_back({inside->from, inside->to, body.density});
    return densestPath(stretches);
}

double transmittance(const Canopy& canopy, Vec3 from, Vec3 direction)
{
    const auto path = leafyPath_m(canopy, from, direction);
    if (!path)
        return 0.0;
    return *path > 0.0 ? std::exp(-extinction_1_m(canopy, direction) * *path) : 1.0;
}

} // namespace model::light
