#include "model/assessment/find_tree.hpp"

#include <algorithm>
#include <stdexcept>

namespace model {

FoundTree findTree(const Garden& garden, const Tables& tables, const std::string& tree)
{
    const auto found = std::ranges::find(garden.trees, tree, &Tree::id);
    if (found == garden.trees.end())
        throw std::out_of_range("no tree '" + tree + "' in the garden");
    const auto* species = findSpecies(tables, found->species);
    if (!species)
        throw std::out_of_range("no species '" + found->species + "' in the tables");
    return {*found, *species};
}

} // namespace model
