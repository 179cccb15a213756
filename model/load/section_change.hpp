#pragma once

#include "model/load/governing.hpp"

#include <vector>

namespace model::load {

/// What pulls at a section: a moment about its middle, and a force along the axis.
struct Pull {
    Vec3 moment_Nm{};
    double axial_N{};
    friend Pull operator+(const Pull& a, const Pull& b)
    {
        return {a.moment_Nm + b.moment_Nm, a.axial_N + b.axial_N};
    }
    friend Pull operator*(double k, const Pull& a) { return {k * a.moment_Nm, k * a.axial_N}; }
};

/// What pulls at a section by weight and, lee taken off, by wind.
struct Pulls {
    Pull weight;
    Pull wind;
};

/// A section with what pulls at it, in the wind that governs it.
struct LoadedSection {
    Section section;
    Vec3 direction; ///< of the axis, unit
    Pulls pulls;
};

/// \param at  from governing(); a wind scale that it was sought with is not in the result
[[nodiscard]] LoadedSection loadedSection(const LoadCase& load, std::size_t limb,
                                          const Governing& at);

/// Bending moment and greatest principal stress of a section, and how fast they change.
struct Response {
    double bending_Nm{};
    double stress_Pa{};
    double bendingSlope_Nm{}; ///< for a whole `change`
    double stressSlope_Pa{};
};
[[nodiscard]] Response respond(const Section& section, Vec3 direction, const Pull& pull,
                               const Pull& change);

/// The leaf of one limb by itself, and what goes with it when it is thinned out.
struct OwnLeaf {
    Weight weight{}; ///< leaf, twigs, and the rain and ice on them
    DragSums drag{}; ///< of its leafy pieces, nothing taken off for lee
    LeeSums lee{};
};
/// \param icePerLeafArea_kg_m2  ice on leaf and twigs
[[nodiscard]] OwnLeaf ownLeaf(const LoadCase& load, std::size_t limb, double icePerLeafArea_kg_m2);

/// How the pulls at a section of `limb` change when a limb's own leaf is thinned out, for all of
/// that leaf at the rate of its first shoots (L31). The lee that limbs find in each other changes
/// too: the outlines stay, what they are filled with does not.
/// \param thinned  `limb` itself, or a limb that grows from it, near or far
/// \returns  zero if it joins nearer the union than the section
[[nodiscard]] Pulls thinningSlope(const LoadCase& load, std::size_t limb, const Governing& at,
                                  std::size_t thinned, const OwnLeaf& leaf,
                                  double icePerLeafArea_kg_m2);

} // namespace model::load
