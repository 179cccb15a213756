#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/tree.hpp"
#include "model/load/conditions.hpp"
#include "model/load/section.hpp"
#include "model/species/species.hpp"

#include <optional>
#include <span>
#include <vector>

namespace model::load {

/// A short straight stretch of a limb with everything that loads it, and the cross-section at its
/// start. Wood tapers evenly along it; leaf, twigs and crop are spread evenly.
struct Piece {
    double at_m{}; ///< where it starts, along the limb from its union
    double length_m{};
    Vec3 from_m{};
    Vec3 direction{}; ///< unit, towards the tip
    double thick_m{}; ///< diameter at the start
    double thin_m{};  ///< diameter at the end
    double leaf_m2{};
    double leafy_kg{};
    double fruit_kg{};
    double rain_kg{};
    double ice_kg{};        ///< on its wood, leaf and twigs
    double prop_kg{};       ///< that a prop at its end takes off it (L30)
    double radius_m{};      ///< of the leafy body around it; 0: bare wood
    double hang_m{};        ///< of the shoots below the body
    double density{};       ///< of its leaf, relative to medium
    double ends_m2{};       ///< its share of what the round ends of the limb's leafy part show
    Section section{};      ///< at the start
    double factorAtStart{}; ///< strength over that of green clear wood: limb and union
    double factorWithin{};  ///< the same, between its ends
    bool hasStrength{true}; ///< at the start

    [[nodiscard]] bool bare() const { return radius_m <= 0.0; }
};

/// A limb cut into pieces, base first. Pieces start wherever a load, a diameter or a strength
/// changes course: at stations, laterals, leaves, defects and the end of the union zone; and so
/// often that a section in the middle of a taper isn't missed.
struct LimbPieces {
    std::vector<Piece> pieces;
    double wood_kg{};
    double leaf_kg{};
    double twig_kg{};
    double fruit_kg{};
    double rain_kg{};
    double ice_kg{};
    /// For each limb that grows from it, in LimbOrder::children order: the piece that starts where
    /// it joins; the number of pieces for one that joins at the tip.
    std::vector<std::size_t> joinsAt;
};

/// What the limbs of one tree are cut by.
struct Cutting {
    const Tree& tree;
    const LimbOrder& order;
    const Foliation& foliation;
    const Species& species;
    const Conditions& conditions; ///< its gust is not used
};

/// Cuts one limb. It depends on nothing but the limb itself, where others join it, and the two
/// figures given.
/// \param bodies  the limb's own leafy bodies
/// \param aspectRatio  of its union; \param onDeadWood  it grows from dead wood
[[nodiscard]] LimbPieces cutLimb(const Cutting& cutting, std::size_t limb,
                                 std::span<const LeafyBody> bodies, double aspectRatio,
                                 bool onDeadWood);

/// Hangs other leaf, and rain on it, on a limb that was cut before and is as it was then.
/// \param bodies  the limb's own leafy bodies \pre  no ice: what hangs on wood is kept
void hangLeafOn(const Cutting& cutting, std::span<const LeafyBody> bodies, LimbPieces& cut);

/// True for every limb that grows from dead wood.
[[nodiscard]] std::vector<bool> growsFromDeadWood(const Tree& tree, const LimbOrder& order);

/// Mass and centre of a stretch of evenly tapering wood.
struct Frustum {
    double volume_m3{};
    double centre_m{}; ///< from its start, along the axis
};
[[nodiscard]] Frustum frustum(double thick_m, double thin_m, double length_m);

} // namespace model::load
