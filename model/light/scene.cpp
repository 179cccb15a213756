#include "model/light/scene.hpp"

#include "model/light/daylight.hpp"

#include <stdexcept>

namespace model::light {

Scene scene(const Garden& garden, std::span<const Foliation> foliations, const Tables& tables,
            std::chrono::year_month_day date)
{
    if (foliations.size() != garden.trees.size())
        throw std::domain_error("scene: need one foliation for each tree");
    Scene result;
    for (std::size_t i = 0; i < garden.trees.size(); ++i) {
        const auto& tree = garden.trees[i];
        const Species* species = findSpecies(tables, tree.species);
        if (species == nullptr)
            throw std::domain_error("scene: no species '" + tree.species + "' in the tables");
        result.trees.push_back(
            canopy(tree, foliations[i], *species, leafShare(*species, garden.place, date)));
    }
    for (const auto& structure : garden.structures)
        if (const auto solid = prism(structure))
            result.structures.push_back(*solid);
    return result;
}

void trace(const Scene& scene, Vec3 from, Vec3 direction, RayLight& light)
{
    light.trees.assign(scene.trees.size(), 1.0);
    light.structures = transmittance(scene.structures, from, direction);
    if (light.structures == 0.0)
        return;
    for (std::size_t i = 0; i < scene.trees.size(); ++i)
        light.trees[i] = transmittance(scene.trees[i], from, direction);
}

} // namespace model::light
