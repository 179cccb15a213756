#include "model/load/section.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model::load {
namespace {

constexpr double kPi = std::numbers::pi;

/// Greatest shear of a bar with a hollow off its centre over that of the same hollow in the middle
/// (L13). \param n  hollow over bar, \param e  offset over bar, of diameters
double shearRise(double n, double e)
{
    const auto power = [n](int exponent) { return std::pow(n, exponent); };
    const auto less = [&power](int exponent) { return 1.0 - power(exponent); };
    const double third = 48.0 * power(2) * (1.0 + 2.0 * power(2) + 3.0 * power(4) + 2.0 * power(6));
    const double fourth = 64.0 * power(2) *
                          (2.0 + 12.0 * power(2) + 19.0 * power(4) + 28.0 * power(6) +
                           18.0 * power(8) + 14.0 * power(10) + 3.0 * power(12));
    return 1.0 + 4.0 * power(2) / less(2) * e + 32.0 * power(2) / (less(2) * less(4)) * e * e +
           third / (less(2) * less(4) * less(6)) * std::pow(e, 3) +
           fourth / (less(2) * less(4) * less(6) * less(8)) * std::pow(e, 4);
}

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

Section offCentreSection(double diameter_m, double thinnest_m, double thickest_m)
{
    const double hollow = diameter_m - thinnest_m - thickest_m;
    if (hollow <= 0.0)
        return solidSection(diameter_m);
    if (thinnest_m <= 0.0)
        return {};
    const double offset = (thickest_m - thinnest_m) / 2.0;
    const double n = hollow / diameter_m;
    const Section solid = solidSection(diameter_m);
    return {solid.area_m2 * (1.0 - n * n), offCentreModulus_m3(diameter_m, hollow, offset),
            solid.torsion_m3 * (1.0 - std::pow(n, 4)) / shearRise(n, offset / diameter_m)};
}

double principalStress_Pa(const Section& section, const SectionForces& forces)
{
    const double along = std::abs(forces.bending_Nm) / section.bending_m3 +
                         std::abs(forces.axial_N) / section.area_m2;
    const double shear = std::abs(forces.torsion_Nm) / section.torsion_m3;
    return along / 2.0 + std::sqrt(along * along / 4.0 + shear * shear); // (L10)
}

} // namespace model::load
