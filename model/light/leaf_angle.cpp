#include "model/light/leaf_angle.hpp"

#include "model/geometry/angle.hpp"

#include <cmath>
#include <stdexcept>

namespace model::light {

double leafProjection(double x, double zenith_deg)
{
    if (!(x > 0.0))
        throw std::domain_error("leafProjection: need x > 0");
    // K cos z with the cosine drawn under the root, so that a level beam is no special case.
    const double c = std::cos(radians(zenith_deg));
    const double s = std::sin(radians(zenith_deg));
    return std::sqrt(x * x * c * c + s * s) / (x + 1.774 * std::pow(x + 1.182, -0.733));
}

double meanLeafAngle_deg(double x)
{
    if (!(x > 0.0))
        throw std::domain_error("meanLeafAngle_deg: need x > 0");
    return degrees(9.65 * std::pow(3.0 + x, -1.65));
}

} // namespace model::light
