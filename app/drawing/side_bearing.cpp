#include "app/drawing/side_bearing.hpp"

#include "app/drawing/side_frame.hpp"
#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

/// Bearing of a polygon's longest edge, the half of it nearer to north, degrees.
double lengthwise_deg(const model::Polygon& outline)
{
    model::Point2 longest{0.0, 1.0};
    double most = 0.0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const auto edge = outline[(i + 1) % outline.size()] - outline[i];
        if (model::norm(edge) > most + 1e-9) {
            most = model::norm(edge);
            longest = edge;
        }
    }
    double bearing = model::degrees(std::atan2(longest.x, longest.y));
    if (bearing > 90.0)
        bearing -= 180.0;
    if (bearing <= -90.0)
        bearing += 180.0;
    return std::fmod(std::round(bearing) + 360.0, 360.0);
}

template <typename Things>
const model::Polygon* nearest(const Things& things, const model::Tree& tree)
{
    const double reach = reach_m(tree);
    const model::Polygon* best = nullptr;
    double least = reach;
    for (const auto& thing : things) {
        const double away = model::distance_m({tree.position_m, tree.position_m}, thing.outline_m);
        if (away < least) {
            least = away;
            best = &thing.outline_m;
        }
    }
    return best;
}

} // namespace

double tellingBearing_deg(const model::Garden& garden, const model::Tree& tree)
{
    if (const auto* strip = nearest(garden.strips, tree))
        return lengthwise_deg(*strip);
    if (const auto* planting = nearest(garden.plantings, tree))
        return lengthwise_deg(*planting);
    return 0.0;
}

} // namespace app
