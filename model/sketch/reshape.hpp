#pragma once

#include "model/garden/tree.hpp"

#include <string>

/// What a gardener does to a drawn tree: bend, slide, grow and take away limbs. Every function
/// takes a tree and gives the changed one back; whether the result can be reckoned with is
/// validate()'s to say.
namespace model::sketch {

/// Bends a limb: station `station` goes to `to_m` (tree frame), the stations beyond it go along by
/// as much, those between it and the union by their share of the way. Limbs that grow from this
/// one ride along where they join, unchanged in shape. Leaf, defects and props keep their place
/// between the stations. Station 0 is the union; to move it, see slideUnion.
/// \throws std::domain_error  if there is no such limb or station, or station is 0
[[nodiscard]] Tree bendLimb(const Tree& tree, const std::string& limb, std::size_t station,
                            Vec3 to_m);

/// Slides a limb along the limb it grows from to the place nearest to `near_m` (tree frame), with
/// everything that grows from it.
/// \throws std::domain_error  if there is no such limb, or it is the trunk
[[nodiscard]] Tree slideUnion(const Tree& tree, const std::string& limb, Vec3 near_m);

/// Gives a limb the girth `diameter_m` at one station.
/// \throws std::domain_error  if there is no such limb or station
[[nodiscard]] Tree setDiameter(const Tree& tree, const std::string& limb, std::size_t station,
                               double diameter_m);

/// Calls a limb by another name.
/// \throws std::domain_error  if there is no such limb
[[nodiscard]] Tree renameLimb(const Tree& tree, const std::string& limb, const std::string& name);

/// The tree without a limb and without all that grows from it: as if it had never been drawn.
/// \throws std::domain_error  if there is no such limb, or it is the trunk
[[nodiscard]] Tree removeLimb(const Tree& tree, const std::string& limb);

} // namespace model::sketch
