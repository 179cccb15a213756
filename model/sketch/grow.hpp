#pragma once

#include "model/garden/tree.hpp"

#include <optional>
#include <span>
#include <vector>

namespace model::sketch {

/// A stroke drawn on the side view, as places in the tree's frame, all in the upright plane across
/// the view through the place gripped. It starts where the wood was gripped.
struct Stroke {
    std::vector<Vec3> points_m; ///< at least two
};

/// The place on the tree's wood nearest to a line of sight.
struct Grip {
    std::size_t limb{kNoLimb};
    double at_m{};       ///< along the limb
    Vec3 position_m{};   ///< on the limb's axis, tree frame
    double distance_m{}; ///< from the axis to the line of sight
};

/// Where a press on the side view takes hold of the tree: the nearest wood, as seen along
/// `lookAlong` (level, length one) through `at_m`. Nothing if no wood lies within `reach_m` of the
/// line of sight, measured from the bark.
[[nodiscard]] std::optional<Grip> grip(const Tree& tree, Vec3 at_m, Vec3 lookAlong, double reach_m);

/// A limb from one stroke: it joins the limb gripped, follows the stroke with as few stations as
/// keep within a twenty-fifth of its length (six at most), and tapers by rule: as thick at the
/// union as a fortieth of its length, six tenths of the wood it grows from at most, a quarter of
/// that at the tip. It gets leaf like the limb it grows from, or that one's own siblings.
/// All of it is a first guess to drag into shape; the limb is marked as guessed.
/// \throws std::domain_error  if the stroke has fewer than two places
[[nodiscard]] Limb limbFromStroke(const Tree& tree, const Grip& from, const Stroke& stroke);

/// The tree with such a limb at the end of its limbs. Where its leaf asks for thicker wood than
/// that rule gives it, or than the limbs beneath have, they get it by the pipe model
/// (docs/methods/sketch.md, K2) as those of a first tree do, unless their thickness was measured.
/// \throws std::domain_error  as limbFromStroke() does
[[nodiscard]] Tree growLimb(const Tree& tree, const Grip& from, const Stroke& stroke);

/// How long a limb to start with the wood gripped can carry, m: as slender as limbFromStroke()
/// draws them, but no shorter than a twig of 0.25 m and no longer than 1 m.
[[nodiscard]] double firstLength_m(const Tree& tree, const Grip& from);

/// An id that no limb of the tree has: "limb-1", "limb-2", ...
[[nodiscard]] std::string freeLimbId(const Tree& tree);

} // namespace model::sketch
