#include "model/crown/mass.hpp"

#include <numbers>

namespace model {

double woodVolume_m3(const Limb& limb)
{
    double volume = 0.0;
    for (std::size_t s = 1; s < limb.stations.size(); ++s) {
        const auto& from = limb.stations[s - 1];
        const auto& to = limb.stations[s];
        const double thick = from.diameter_m;
        const double thin = to.diameter_m;
        volume += std::numbers::pi / 12.0 * norm(to.position_m - from.position_m) *
                  (thick * thick + thick * thin + thin * thin);
    }
    return volume;
}

std::vector<LimbMass> limbMasses(const Tree& tree, const Foliation& foliation,
                                 const Species& species, bool inLeaf)
{
    const auto perArea = leafyMassPerArea(species);
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    std::vector<LimbMass> masses;
    masses.reserve(tree.limbs.size());
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        const auto& limb = tree.limbs[i];
        masses.push_back({woodVolume_m3(limb) * species.wood.limbDensity_kg_m3.value,
                          inLeaf ? areas[i] * perArea.leaf_kg : 0.0, areas[i] * perArea.twig_kg,
                          limb.fruit_kg});
    }
    return masses;
}

} // namespace model
