#include "model/load/section.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model::load {
namespace {

constexpr double kPi = std::numbers::pi;

} // namespace

Section solidSection(double diameter_m)
{
    const double bending = kPi * diameter_m * diameter_m * diameter_m / 32.0;
    return {kPi * diameter_m * diameter_m / 4.0, bending, 2.0 * bending};
}

Section hollowSection(double diameter_m, double wall_m)
{
    const Section solid = solidSection(diameter_m);
    const double ratio = std::clamp(1.0 - 2.0 * wall_m / diameter_m, 0.0, 1.0);
    const double left = 1.0 - std::pow(ratio, 4); // (L11)
    return {solid.area_m2 * (1.0 - ratio * ratio), solid.bending_m3 * left,
            solid.torsion_m3 * left};
}

Section openSection(double diameter_m, double wall_m, double opening_rad)
{
    const double outer = diameter_m / 2.0;
    const double wall = std::min(wall_m, outer);
    const double inner = outer - wall;
    const double half = opening_rad / 2.0;
    const double arc = 2.0 * kPi - opening_rad;
    const double area = (outer * outer - inner * inner) * arc / 2.0; // (L12)
    const double fourths = (std::pow(outer, 4) - std::pow(inner, 4)) / 4.0;
    const double centre =
        -2.0 * std::sin(half) * (std::pow(outer, 3) - std::pow(inner, 3)) / 3.0 / area;
    const double towards =
        fourths * (arc / 2.0 - std::sin(opening_rad) / 2.0) - area * centre * centre;
    const double across = fourths * (arc / 2.0 + std::sin(opening_rad) / 2.0);
    const double lip = (half <= kPi / 2.0 ? outer : inner) * std::cos(half);
    const double reachTowards = std::max(lip - centre, outer + centre);
    const double reachAcross = half <= kPi / 2.0 ? outer : outer * std::sin(half);
    const double bending = std::min(towards / reachTowards, across / reachAcross);
    if (opening_rad <= 0.0)
        return hollowSection(diameter_m, wall_m);
    // A slit tube carries torque by shear across its wall only: length x thickness^2 / 3.
    const double torsion = (outer + inner) / 2.0 * arc * wall * wall / 3.0;
    return {area, bending, torsion};
}

double offCentreModulus_m3(double diameter_m, double hollow_m, double offset_m)
{
    const double outer = diameter_m / 2.0;
    const double inner = hollow_m / 2.0;
    const double centre = -inner * inner * offset_m / (outer * outer - inner * inner); // (L13)
    const double secondMoment =
        kPi * std::pow(outer, 4) / 4.0 + kPi * outer * outer * centre * centre -
        (kPi * std::pow(inner, 4) / 4.0 + kPi * inner * inner * std::pow(offset_m - centre, 2));
    return secondMoment / (outer + std::abs(centre));
}

double principalStress_Pa(const Section& section, const SectionForces& forces)
{
    const double along = std::abs(forces.bending_Nm) / section.bending_m3 +
                         std::abs(forces.axial_N) / section.area_m2;
    const double shear = std::abs(forces.torsion_Nm) / section.torsion_m3;
    return along / 2.0 + std::sqrt(along * along / 4.0 + shear * shear); // (L10)
}

} // namespace model::load
