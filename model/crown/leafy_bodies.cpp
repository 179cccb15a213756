#include "model/crown/leafy_bodies.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model {

double relativeDensity(FoliageDensity density)
{
    switch (density) {
    case FoliageDensity::sparse:
        return 0.6;
    case FoliageDensity::dense:
        return 1.4;
    case FoliageDensity::medium:
        break;
    }
    return 1.0;
}

namespace {

constexpr double kHemStep_m = 0.3;

} // namespace

void appendLeafyBodies(const Limb& limb, std::size_t index, std::vector<LeafyBody>& bodies)
{
    if (!limb.foliage)
        return;
    const auto& foliage = *limb.foliage;
    const double hem_m = foliage.hem_m.value_or(0.0);
    const auto room = [&](Vec3 a, Vec3 b) { // between the body's underside and the hem
        return std::max(0.0, std::min(a.z, b.z) - foliage.radius_m - hem_m);
    };
    const auto axis = stretch(limb, foliage.from_m, length_m(limb));
    double along = foliage.from_m;
    for (std::size_t s = 1; s < axis.size(); ++s) {
        const Vec3 from = axis[s - 1].position_m;
        const Vec3 to = axis[s].position_m;
        const bool cutShort = foliage.hanging_m > 0.0 && foliage.hanging_m > room(from, to);
        const double pieces =
            cutShort ? std::max(1.0, std::ceil(std::abs(to.z - from.z) / kHemStep_m)) : 1.0;
        for (double piece = 0.0; piece < pieces; piece += 1.0) {
            const Vec3 a = between(from, to, piece / pieces);
            const Vec3 b = between(from, to, (piece + 1.0) / pieces);
            const double hang = std::min(foliage.hanging_m, room(a, b));
            const double length = norm(b - a);
            bodies.push_back({index, Curtain{a, b, foliage.radius_m, hang}, along, along + length,
                              relativeDensity(foliage.density) * (1.0 - foliage.thinned)});
            along += length;
        }
    }
}

std::vector<LeafyBody> leafyBodies(const Tree& tree)
{
    std::vector<LeafyBody> bodies;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i)
        appendLeafyBodies(tree.limbs[i], i, bodies);
    return bodies;
}

double sharingVolume_m3(const LeafyBody& body)
{
    const Vec3 along = body.solid.b - body.solid.a;
    const double r = body.solid.radius_m;
    return std::numbers::pi * r * r * norm(along) +
           2.0 * r * body.solid.hang_m * std::hypot(along.x, along.y);
}

std::vector<Curtain> woodSolids(const Limb& limb)
{
    std::vector<Curtain> solids;
    for (std::size_t s = 1; s < limb.stations.size(); ++s) {
        const auto& from = limb.stations[s - 1];
        const auto& to = limb.stations[s];
        solids.push_back(
            {from.position_m, to.position_m, std::max(from.diameter_m, to.diameter_m) / 2.0, 0.0});
    }
    return solids;
}

} // namespace model
