#include "model/species/species.hpp"

#include <algorithm>

namespace model {

const Species* findSpecies(const Tables& tables, const std::string& latin)
{
    const auto found = std::ranges::find(tables.species, latin, &Species::latin);
    return found == tables.species.end() ? nullptr : &*found;
}

const Plant* findPlant(const Tables& tables, const std::string& latin)
{
    const auto found = std::ranges::find(tables.plants, latin, &Plant::latin);
    return found == tables.plants.end() ? nullptr : &*found;
}

} // namespace model
