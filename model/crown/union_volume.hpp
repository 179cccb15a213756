#pragma once

#include "model/crown/leafy_bodies.hpp"

namespace model {

/// Volume of the union of leafy bodies, m3, by upright lines `spacing_m` apart; on each line the
/// stretches inside the bodies are exact. Off by at most 0.5 % for one ball and 1.7 % for one
/// upright body at a spacing of an eighth of the radius (measured, tests/model/crown); in a whole
/// tree such errors cancel.
[[nodiscard]] double unionVolume_m3(const std::vector<LeafyBody>& bodies, double spacing_m);

} // namespace model
