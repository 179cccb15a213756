#include "app/drawing/scale_bar.hpp"

#include <cmath>

namespace app {

double scaleBarLength_m(double pixelsPerMetre, double mostPixels, const Units& units)
{
    constexpr double kFoot_m = 0.3048;
    const double unit_m = units.measures() == Measures::unitedStates ? kFoot_m : 1.0;
    const double most = mostPixels / pixelsPerMetre / unit_m;
    const double power = std::pow(10.0, std::floor(std::log10(most)));
    double best = power;
    for (const double step : {2.0, 5.0})
        if (step * power <= most)
            best = step * power;
    return best * unit_m;
}

} // namespace app
