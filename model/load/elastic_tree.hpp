#pragma once

#include "model/garden/tree.hpp"
#include "model/load/bending.hpp"
#include "model/species/species.hpp"

namespace model::load {

/// All limbs of a tree, cut into pieces with what hangs on them (no props taken off).
[[nodiscard]] std::vector<LimbPieces> cutLimbs(const Tree& tree, const LimbOrder& order,
                                               const Foliation& foliation, const Species& species,
                                               const Conditions& conditions);

/// The limbs with their stiffness (L28) and the places of their props. What refers to `order` and
/// `limbs` lives no longer than they do.
/// \throws std::domain_error  if the wood has no stiffness
[[nodiscard]] ElasticTree elasticTree(const Tree& tree, const LimbOrder& order,
                                      const std::vector<LimbPieces>& limbs, const Species& species);

/// All that weighs on the pieces: wood, leaf, twigs, crop, rain and ice.
[[nodiscard]] TreeWeight hungWeight(const std::vector<LimbPieces>& limbs, const Species& species);

/// What weighed on them when they were drawn: wood, leaf and twigs.
[[nodiscard]] TreeWeight drawnWeight(const std::vector<LimbPieces>& limbs, const Species& species);

} // namespace model::load
