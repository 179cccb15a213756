#include "model/crown/leafy_bodies.hpp"

#include <algorithm>

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

std::vector<LeafyBody> leafyBodies(const Tree& tree)
{
    std::vector<LeafyBody> bodies;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        const auto& limb = tree.limbs[i];
        if (!limb.foliage)
            continue;
        const auto& foliage = *limb.foliage;
        const auto axis = stretch(limb, foliage.from_m, length_m(limb));
        double along = foliage.from_m;
        for (std::size_t s = 1; s < axis.size(); ++s) {
            const Vec3 a = axis[s - 1].position_m;
            const Vec3 b = axis[s].position_m;
            // Shoots can't hang into the ground: the lower end decides for the whole piece.
            const double room = std::min(a.z, b.z) - foliage.radius_m;
            const double hang = std::clamp(foliage.hanging_m, 0.0, std::max(0.0, room));
            const double length = norm(b - a);
            bodies.push_back({i, Curtain{a, b, foliage.radius_m, hang}, along, along + length,
                              relativeDensity(foliage.density)});
            along += length;
        }
    }
    return bodies;
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
