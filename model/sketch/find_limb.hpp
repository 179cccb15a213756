#pragma once

#include "model/garden/tree.hpp"

#include <cstddef>
#include <string>

namespace model::sketch {

/// Where the limb of this id stands among the tree's limbs.
/// \throws std::domain_error  the tree has no such limb
[[nodiscard]] std::size_t findLimb(const Tree& tree, const std::string& id);

} // namespace model::sketch
