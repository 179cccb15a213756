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

} // namespace model::light
