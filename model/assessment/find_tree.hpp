#pragma once

#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

#include <string>

namespace model {

/// A tree of a garden and its species.
struct FoundTree {
    const Tree& tree;
    const Species& species;
};

/// \throws std::out_of_range  if there is no such tree, or the tables don't hold its species
[[nodiscard]] FoundTree findTree(const Garden& garden, const Tables& tables,
                                 const std::string& tree);

} // namespace model
