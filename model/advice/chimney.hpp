#pragma once

#include "model/advice/rule.hpp"
#include "model/garden/garden.hpp"

#include <vector>

namespace model::advice {

/// The mouths of chimneys that wood or leaf of a tree comes within kChimney_m of, in any direction
///. The mouth is taken over the middle of the outline, at the structure's height.
[[nodiscard]] std::vector<Finding> chimneyNotes(const Garden& garden, const Tree& tree);

} // namespace model::advice
