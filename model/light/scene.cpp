#include "model/light/scene.hpp"

#include "model/light/daylight.hpp"

#include <algorithm>
#include <stdexcept>

namespace model::light {

namespace {

const Species& speciesOf(const std::string& latin, const Tables& tables)
{
    const Species* species = findSpecies(tables, latin);
    if (species == nullptr)
        throw std::domain_error("scene: no species '" + latin + "' in the tables");
    return *species;
}

} // namespace

std::vector<double> leafShares(const Garden& garden, const Tables& tables,
                               std::chrono::year_month_day date)
{
    std::vector<double> shares;
    const auto add = [&](const auto& tree) {
        shares.push_back(
            leafShare(speciesOf(tree.species, tables), garden.place, date, tree.leafDates));
    };
    std::ranges::for_each(garden.trees, add);
    std::ranges::for_each(garden.neighbours, add);
    return shares;
}

Scene scene(const Garden& garden, std::span<const Foliation> foliations, const Tables& tables,
            std::chrono::year_month_day date)
{
    if (foliations.size() != garden.trees.size())
        throw std::domain_error("scene: need one foliation for each tree");
    Scene result;
    const Ground ground(garden.slope);
    const auto shares = leafShares(garden, tables, date);
    for (std::size_t i = 0; i < garden.trees.size(); ++i)
        result.trees.push_back(canopy(garden.trees[i], foliations[i],
                                      speciesOf(garden.trees[i].species, tables), shares[i],
                                      ground));
    for (const auto& neighbour : garden.neighbours)
        result.trees.push_back(canopy(neighbour, speciesOf(neighbour.species, tables),
                                      shares[result.trees.size()], ground));
    for (const auto& structure : garden.structures)
        if (auto solid = prism(structure, ground))
            result.structures.push_back(std::move(*solid));
    for (const auto& planting : garden.plantings)
        if (auto solid = prism(planting, ground))
            result.structures.push_back(std::move(*solid));
    return result;
}

} // namespace model::light
