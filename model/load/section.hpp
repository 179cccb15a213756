#pragma once

namespace model::load {

/// What the wood left in a cross-section offers against load.
struct Section {
    double area_m2{};
    double bending_m3{}; ///< section modulus, for the direction that is weakest
    double torsion_m3{}; ///< torque over the greatest shear stress
    friend bool operator==(const Section&, const Section&) = default;
};

/// \pre diameter > 0
[[nodiscard]] Section solidSection(double diameter_m);

/// A round hollow in the middle, closed all round (L11). A wall as thick as the radius, or
/// thicker, is solid.
[[nodiscard]] Section hollowSection(double diameter_m, double wall_m);

/// A hollow in the middle that is open over `opening_rad` of the circle, through the whole wall
/// (L12). \pre 0 <= opening_rad < 2 pi
[[nodiscard]] Section openSection(double diameter_m, double wall_m, double opening_rad);

/// Least section modulus of a round bar with a round hollow off its centre by `offset_m`, bent in
/// the plane of the offset, m3 (L13). \pre hollow inside the bar: offset + hollow / 2 < diameter /
/// 2
[[nodiscard]] double offCentreModulus_m3(double diameter_m, double hollow_m, double offset_m);

/// A round hollow off the middle, closed all round, by its thinnest wall and the thickest across
/// from it (L13). Walls that together leave no hollow: solid; no wall at the thinnest place:
/// nothing is counted on.
[[nodiscard]] Section offCentreSection(double diameter_m, double thinnest_m, double thickest_m);

/// Forces on a cross-section.
struct SectionForces {
    double bending_Nm{};
    double torsion_Nm{};
    double axial_N{}; ///< pull or push
};

/// Greatest principal stress, Pa: bending and axial force on the outermost fibre, with shear by
/// torsion (L10). Takes magnitudes: the side where bending and axial force add up is the worst.
[[nodiscard]] double principalStress_Pa(const Section& section, const SectionForces& forces);

} // namespace model::load
