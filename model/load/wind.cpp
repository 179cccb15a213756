#include "model/load/wind.hpp"

#include <algorithm>
#include <cmath>

namespace model::load {
namespace {

// Garden walls and tall hedges about 2 m high lift the wind profile by 0.8 of their height:
// EN 1991-1-4 A.5. The height of the walls is assumed.
constexpr double kWalledDisplacement_m = 0.8 * 2.0;

} // namespace

double airDensity_kg_m3(double altitude_m, double temperature_C)
{
    constexpr double kGasConstant_J_kgK = 287.05;
    const double pressure_Pa = 101325.0 * std::pow(1.0 - 2.25577e-5 * altitude_m, 5.25588); // (L1)
    return pressure_Pa / (kGasConstant_J_kgK * (temperature_C + 273.15));
}

double pressureExposure(Roughness roughness, double height_m)
{
    constexpr double kLevelBelow_m = 4.572; // 15 ft
    const double z = std::clamp(height_m, kLevelBelow_m, roughness.gradientHeight_m);
    return 2.01 * std::pow(z / roughness.gradientHeight_m, 2.0 / roughness.power); // (L2)
}

double gustShare(Exposure exposure, double height_m)
{
    switch (exposure) {
    case Exposure::open:
        return std::sqrt(pressureExposure(kExposureC, height_m));
    case Exposure::scattered:
        // Between two categories: the geometric mean, as ASCE 7 allows between exposures.
        return std::pow(
            pressureExposure(kExposureB, height_m) * pressureExposure(kExposureC, height_m), 0.25);
    case Exposure::builtUp:
        return std::sqrt(pressureExposure(kExposureB, height_m));
    case Exposure::walled:
        break;
    }
    return std::sqrt(pressureExposure(kExposureB, height_m - kWalledDisplacement_m));
}

} // namespace model::load
