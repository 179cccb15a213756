#pragma once

#include "model/garden/tree.hpp"
#include "model/load/section.hpp"

namespace model::load {

/// Breaking stress over the green bending strength of small clear samples, both reckoned on a
/// round section over bark (L14).
inline constexpr double kLimbFactor = 0.40; ///< Kane 2007, Table 3, 26 limbs
inline constexpr double kStemFactor = 0.85; ///< Gardiner, Peltola & Kellomaki 2000: knots

/// Strength at a union over that of the limb beyond it (L15).
/// \param aspectRatio  the limb's diameter at its union over its parent's there
[[nodiscard]] double unionFactor(Union kind, double aspectRatio);

/// The limb's diameter at its union over its parent's there; 0 for the trunk.
[[nodiscard]] double aspectRatio(const Tree& tree, const LimbOrder& order, std::size_t limb);

/// How far from its union a limb counts as union: one diameter (L15).
[[nodiscard]] double unionZone_m(const Limb& limb);

/// The wood left at a defect in a limb of this diameter. Blanks are filled with assumed values
/// (L16); a crack or dead wood leaves the section, for it has no strength at all.
[[nodiscard]] Section sectionAt(const Defect& defect, double diameter_m);

/// False for cracked or dead wood: it is given no strength, whatever its section.
[[nodiscard]] bool leavesStrength(DefectKind kind);

} // namespace model::load
