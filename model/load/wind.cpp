#include "model/load/wind.hpp"

#include <algorithm>
#include <cmath>

namespace model::load {
namespace {

// Garden walls and tall hedges about 2 m high lift the wind profile by 0.8 of their height:
// EN 1991-1-4 A.5. The height of the walls is assumed.
constexpr double kWalledDisplacement_m = 0.8 * 2.0;

constexpr double kLevelBelow_m = 4.572; // 15 ft

} // namespace

double airDensity_kg_m3(double altitude_m, double temperature_C)
{
    constexpr double kGasConstant_J_kgK = 287.05;
    const double pressure_Pa = 101325.0 * std::pow(1.0 - 2.25577e-5 * altitude_m, 5.25588); // (L1)
    return pressure_Pa / (kGasConstant_J_kgK * (temperature_C + 273.15));
}

double pressureExposure(Roughness roughness, double height_m)
{
    const double z = std::clamp(height_m, kLevelBelow_m, roughness.gradientHeight_m);
    return 2.01 * std::pow(z / roughness.gradientHeight_m, 2.0 / roughness.power); // (L2)
}

GustProfile::GustProfile(Exposure exposure)
{
    // Between two categories: the geometric mean, as ASCE 7 allows between exposures.
    const Roughness a = exposure == Exposure::open ? kExposureC : kExposureB;
    const Roughness b =
        exposure == Exposure::open || exposure == Exposure::scattered ? kExposureC : kExposureB;
    power_ = (1.0 / a.power + 1.0 / b.power) / 2.0;
    perMetre_ = std::sqrt(2.01) * std::pow(a.gradientHeight_m, -0.5 / a.power) *
                std::pow(b.gradientHeight_m, -0.5 / b.power);
    highest_m_ = std::min(a.gradientHeight_m, b.gradientHeight_m);
    raised_m_ = exposure == Exposure::walled ? kWalledDisplacement_m : 0.0;
}

double GustProfile::at(double height_m) const
{
    const double z = std::clamp(height_m - raised_m_, kLevelBelow_m, highest_m_);
    return perMetre_ * std::pow(z, power_); // (L2, L3)
}

double gustShare(Exposure exposure, double height_m)
{
    return GustProfile(exposure).at(height_m);
}

} // namespace model::load
