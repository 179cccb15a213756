#pragma once

#include "model/advice/targets.hpp"
#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

#include <random>

namespace model::advice {

/// Stretches of wood between laterals: what a tree of limbs is to a saw.
[[nodiscard]] std::size_t pieceCount(const Tree& tree);

/// A plausible tree of this many pieces over a path and a drive, a bed to the north of it. First
/// trees of random measures, with laterals added or left out until they have the size.
[[nodiscard]] Garden plausibleGarden(std::mt19937& random, std::size_t pieces);

/// What a gardener might ask of it, and can have: some sets of cuts that keep every rule and take
/// 6 to 16 % of the leaf are drawn, and most of what one of them brings is asked for, of headroom
/// (written into the strips), of relief and of light at once.
[[nodiscard]] std::vector<Goal> reachableGoals(std::mt19937& random, Garden& garden,
                                               const Foliation& foliation, const Species& species,
                                               const Surroundings& around,
                                               std::chrono::year_month_day date);

} // namespace model::advice
