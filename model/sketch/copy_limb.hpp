#pragma once

#include "model/garden/tree.hpp"

#include <string>

/// Limbs made from limbs that are there, so that a gardener needn't draw each. Every function takes
/// a tree and gives the changed one back, with the new limb and what grows from it at the end of
/// its limbs; new ids are "limb-1", "limb-2" ..., names are left blank.
namespace model::sketch {

/// A copy of a limb and of all that grows from it at the same union, turned clockwise about the
/// upright through that union.
/// \throws std::domain_error  if there is no such limb, or it is the trunk
[[nodiscard]] Tree copyLimb(const Tree& tree, const std::string& limb, double turn_deg);

/// The same, mirrored in the upright plane through the union that lies across `level` (level,
/// length one): a limb that reaches to the right then has a twin to the left. \throws
/// std::domain_error  if there is no such limb, or it is the trunk
[[nodiscard]] Tree mirrorLimb(const Tree& tree, const std::string& limb, Vec3 level);

/// Divides a limb at `at_m` along it: the outer part becomes a limb of its own that goes on from
/// the end of the inner one. What grows, hangs or was seen beyond goes with it. \throws
/// std::domain_error  if there is no such limb, or less than 0.05 m would be left of a part
[[nodiscard]] Tree splitLimb(const Tree& tree, const std::string& limb, double at_m);

} // namespace model::sketch
