#pragma once

#include "model/crown/leafy_bodies.hpp"

namespace model {

/// Volume of the union of leafy bodies, m3, by upright lines `spacing_m` apart; on each line the
/// stretches inside the bodies are exact. Within 1 % for a spacing of a quarter of the smallest
/// radius (measured, tests/model/crown).
[[nodiscard]] double unionVolume_m3(const std::vector<LeafyBody>& bodies, double spacing_m);

} // namespace model
