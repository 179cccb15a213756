#include "model/light/sky_dome.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model::light {

std::vector<Vec3> skyDirections(int count)
{
    const double goldenAngle = std::numbers::pi * (3.0 - std::sqrt(5.0));
    std::vector<Vec3> directions;
    for (int i = 0; i < count; ++i) {
        const double z = (i + 0.5) / count; // equal heights are equal areas of a sphere
        const double level = std::sqrt(1.0 - z * z);
        directions.push_back(
            {level * std::cos(goldenAngle * i), level * std::sin(goldenAngle * i), z});
    }
    return directions;
}

double skyShare(Vec3 towards, Vec3 facing, int count)
{
    return 2.0 / count * std::max(0.0, dot(towards, facing));
}

} // namespace model::light
