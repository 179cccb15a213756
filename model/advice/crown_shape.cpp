#include "model/advice/crown_shape.hpp"

#include <algorithm>
#include <limits>

namespace model::advice {

CrownShape crownShape(const Tree& tree, const Foliation& foliation)
{
    const auto bodies = leafyBodies(tree);
    if (bodies.empty())
        return {};
    CrownShape shape;
    shape.base_m = std::numeric_limits<double>::infinity();
    for (const auto& body : bodies)
        shape.base_m = std::min(shape.base_m, lowestPoint(body.solid).z);
    shape.top_m = height_m(tree);
    shape.liveCrownRatio = (shape.top_m - shape.base_m) / shape.top_m;
    const double line_m = shape.base_m + 2.0 / 3.0 * (shape.top_m - shape.base_m);
    double below = 0.0;
    double all = 0.0;
    for (const auto& body : bodies) {
        const double low = lowestPoint(body.solid).z;
        const double high = std::max(body.solid.a.z, body.solid.b.z) + body.solid.radius_m;
        const double leaf = leafArea_m2(body, foliation);
        below += leaf * std::clamp((line_m - low) / (high - low), 0.0, 1.0);
        all += leaf;
    }
    shape.lowerTwoThirdsLeaf = all > 0.0 ? below / all : 0.0;
    return shape;
}

} // namespace model::advice
