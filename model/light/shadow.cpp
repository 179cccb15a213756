#include "model/light/shadow.hpp"
#include "model/crown/leafy_bodies.hpp"
#include "model/geometry/angle.hpp"
#include "model/light/daylight.hpp"

#include <cmath>
#include <numbers>

namespace model::light {
namespace {

constexpr double kLowestSun_deg = 2.0;
constexpr int kEdges = 32; // a 32-edged ring has 0.64 % less area than its circle; see ringReach()

/// Corners a little outside the circle, so that the polygon has the circle's area.
double ringReach()
{
    constexpr double kAngle = 2.0 * std::numbers::pi / kEdges;
    return std::sqrt(kAngle / std::sin(kAngle));
}

/// The shadow of the part above the ground of a ball: its rim as the sun sees it, and the disc on
/// which it stands in the ground.
void addBall(Vec3 middle, double radius, Vec3 towards, std::vector<Point2>& points)
{
    if (middle.z <= -radius)
        return;
    const double level = std::hypot(towards.x, towards.y);
    const Vec3 side =
        level > 1e-12 ? Vec3{-towards.y / level, towards.x / level, 0.0} : Vec3{1.0, 0.0, 0.0};
    const Vec3 up = cross(towards, side);
    const double foot = middle.z < radius ? std::sqrt(radius * radius - middle.z * middle.z) : 0.0;
    for (int i = 0; i < kEdges; ++i) {
        const double angle = 2.0 * std::numbers::pi * (i + 0.5) / kEdges;
        const Vec3 round = std::cos(angle) * side + std::sin(angle) * up;
        const Vec3 rim = middle + (ringReach() * radius) * round;
        if (rim.z >= 0.0)
            points.push_back(plan(rim - (rim.z / towards.z) * towards));
        if (foot > 0.0)
            points.push_back(plan(middle) +
                             ringReach() * foot * Point2{std::cos(angle), std::sin(angle)});
    }
}

} // namespace

Polygon shadowOutline(const Curtain& solid, Vec3 towards)
{
    std::vector<Point2> points;
    const auto all = corners(solid);
    for (std::size_t i = 0; i < (solid.hang_m > 0.0 ? 4U : 2U); ++i)
        addBall(all[i], solid.radius_m, towards, points);
    return points.size() < 3 ? Polygon{} : convexHull(points);
}

Region shadow(const Tree& tree, const SunPosition& sun)
{
    if (sun.elevation_deg < kLowestSun_deg)
        return {};
    const Vec3 towards = towardsSun(sun);
    std::vector<Polygon> outlines;
    const auto add = [&](Curtain solid) {
        const Vec3 base{tree.position_m.x, tree.position_m.y, 0.0};
        solid.a += base;
        solid.b += base;
        auto outline = shadowOutline(solid, towards);
        if (outline.size() >= 3)
            outlines.push_back(std::move(outline));
    };
    for (const auto& body : leafyBodies(tree))
        add(body.solid);
    for (const auto& limb : tree.limbs)
        for (const auto& piece : woodSolids(limb))
            add(piece);
    return unite(outlines);
}

std::vector<ShadowAt> shadowsOfDay(const Tree& tree, const Place& place,
                                   std::chrono::year_month_day date, std::chrono::minutes step)
{
    const Instant midnight =
        std::chrono::sys_days{date} -
        std::chrono::milliseconds{std::llround(place.longitude_deg / 15.0 * 3600e3)};
    std::vector<ShadowAt> path;
    for (Instant when = midnight; when < midnight + std::chrono::days{1}; when += step) {
        const auto sun = sunPosition(when, place.latitude_deg, place.longitude_deg);
        if (sun.elevation_deg >= kLowestSun_deg)
            path.push_back({when, sun, shadow(tree, sun)});
    }
    return path;
}

} // namespace model::light
