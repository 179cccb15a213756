#pragma once

#include "model/species/species.hpp"

namespace model::load {

/// Stiffness of round limbs over bark over that of small clear samples of green wood (L28).
inline constexpr double kLimbStiffness = 0.40;
inline constexpr double kStemStiffness = 0.80;

/// Bending stiffness over torsion stiffness, EI / GJ (L28).
inline constexpr double kTwistToBend = 7.5;

/// How much more than at once a limb sags under fruit that hangs for weeks (L28).
inline constexpr double kCreep = 1.4;

/// Modulus of elasticity to reckon a limb or stem over bark with, Pa (L28).
[[nodiscard]] inline double limbStiffness_Pa(const Species& species, bool stem)
{
    return (stem ? kStemStiffness : kLimbStiffness) * species.wood.greenMoe_Pa.value;
}

} // namespace model::load
