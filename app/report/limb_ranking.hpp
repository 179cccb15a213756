#pragma once

#include "model/load/limb_load.hpp"

#include <vector>

namespace app {

/// Loads of all limbs, the one asked for most of its strength first; limbs without strength lead.
[[nodiscard]] std::vector<model::load::LimbLoad> worstFirst(const model::load::TreeLoad& load);

} // namespace app
