#include "model/light/sky.hpp"

#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model::light {

double extraterrestrial_W_m2(int dayOfYear)
{
    constexpr double kSolarConstant_W_m2 = 1361.1;
    const double B = 2.0 * std::numbers::pi * (dayOfYear - 1) / 365.0;
    return kSolarConstant_W_m2 * (1.00011 + 0.034221 * std::cos(B) + 0.00128 * std::sin(B) +
                                  0.000719 * std::cos(2.0 * B) + 0.000077 * std::sin(2.0 * B));
}

double airMass(double elevation_deg)
{
    const double h = std::max(-1.0, elevation_deg);
    return 1.0 / (std::sin(radians(h)) + 0.50572 * std::pow(h + 6.07995, -1.6364));
}

ClearSky clearSky(const SunlitAir& air)
{
    const double I0 = air.extraterrestrial_W_m2;
    const double c = air.sine;
    const double m = air.airMass;
    const double TL = air.turbidity;
    const double fh1 = std::exp(-air.altitude_m / 8000.0);
    const double fh2 = std::exp(-air.altitude_m / 1250.0);
    const double cg1 = 5.09e-5 * air.altitude_m + 0.868;
    const double cg2 = 3.92e-5 * air.altitude_m + 0.0387;
    const double global = cg1 * I0 * c * std::exp(-cg2 * m * (fh1 + fh2 * (TL - 1.0)));
    const double beam = (0.664 + 0.163 / fh1) * I0 * std::exp(-0.09 * m * (TL - 1.0));
    // The beam can't take more of the global light than the least sky light leaves it.
    const double most = global / c * (1.0 - (0.1 - 0.2 * std::exp(-TL)) / (0.1 + 0.882 / fh1));
    const double capped = std::clamp(beam, 0.0, std::max(0.0, most));
    return {capped, global - capped * c, global};
}

ClearSky clearSky(double elevation_deg, int dayOfYear, double altitude_m, double turbidity)
{
    if (elevation_deg <= 0.0)
        return {};
    return clearSky({extraterrestrial_W_m2(dayOfYear), std::sin(radians(elevation_deg)),
                     airMass(elevation_deg) * std::exp(-altitude_m / 8434.5), altitude_m,
                     turbidity});
}

} // namespace model::light
