#include "model/light/shadow.hpp"
#include "model/crown/leafy_bodies.hpp"
#include "model/geometry/angle.hpp"
#include "model/light/canopy.hpp"
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

/// Drops things onto the ground along the sun's rays.
class Dropper {
public:
    Dropper(Vec3 towards, const Ground& ground)
        : towards_(towards), ground_(ground), climb_(towards.z - ground.height_m(plan(towards)))
    {
        const double level = std::hypot(towards.x, towards.y);
        side_ =
            level > 1e-12 ? Vec3{-towards.y / level, towards.x / level, 0.0} : Vec3{1.0, 0.0, 0.0};
        up_ = cross(towards, side_);
        const Vec3 n = ground.normal();
        east_ = Vec3{n.z, 0.0, -n.x};
        east_ = (1.0 / norm(east_)) * east_;
        north_ = cross(n, east_);
    }
    /// The sun stands over the slope.
    [[nodiscard]] bool lights() const { return climb_ > 1e-9; }

    /// Of the part above the ground of a ball: its rim as the sun sees it, and the disc on which it
    /// stands in the ground.
    void ball(Vec3 middle, double radius, std::vector<Point2>& points) const
    {
        const double over = dot(middle - ground_.at({}), ground_.normal());
        if (over <= -radius)
            return;
        const double foot = over < radius ? std::sqrt(radius * radius - over * over) : 0.0;
        const Vec3 stand = middle - over * ground_.normal();
        for (int i = 0; i < kEdges; ++i) {
            const double angle = 2.0 * std::numbers::pi * (i + 0.5) / kEdges;
            const double c = std::cos(angle);
            const double s = std::sin(angle);
            const Vec3 rim = middle + (ringReach() * radius) * (c * side_ + s * up_);
            const double height = rim.z - ground_.height_m(plan(rim));
            if (height >= 0.0)
                points.push_back(plan(rim - (height / climb_) * towards_));
            if (foot > 0.0)
                points.push_back(plan(stand + (ringReach() * foot) * (c * east_ + s * north_)));
        }
    }

    /// Of an ellipsoid, all of it above the ground: an ellipse about the shadow of its middle.
    void ellipsoid(const Ellipsoid& body, std::vector<Point2>& points) const
    {
        const Vec3 n = (1.0 / dot(ground_.normal(), towards_)) * ground_.normal();
        const auto shape = projected(body, Vec3{1.0, 0.0, 0.0} - towards_.x * n,
                                     Vec3{0.0, 1.0, 0.0} - towards_.y * n);
        const double height = body.middle_m.z - ground_.height_m(plan(body.middle_m));
        const Point2 middle = plan(body.middle_m - (height / climb_) * towards_);
        // A root of the ellipse's matrix takes the unit circle to it.
        const double x = std::sqrt(shape.xx);
        const double lean = shape.xy / x;
        const double y = std::sqrt(std::max(0.0, shape.yy - lean * lean));
        for (int i = 0; i < kEdges; ++i) {
            const double angle = 2.0 * std::numbers::pi * (i + 0.5) / kEdges;
            const double c = ringReach() * std::cos(angle);
            const double s = ringReach() * std::sin(angle);
            points.push_back(middle + Point2{x * c, lean * c + y * s});
        }
    }

private:
    Vec3 towards_;
    Ground ground_;
    double climb_;      ///< height gained over the ground along the ray
    Vec3 side_, up_;    ///< unit, across the ray
    Vec3 east_, north_; ///< unit, along the ground
};

/// The shadows of parts of a tree.
class Outlines {
public:
    Outlines(Point2 tree_m, const SunPosition& sun, const Ground& ground)
        : base_m_(ground.at(tree_m)), towards_(towardsSun(sun)), ground_(ground)
    {
    }
    void add(const std::vector<LeafyBody>& bodies)
    {
        for (const auto& body : bodies)
            add(body.solid);
    }
    void add(const Limb& limb)
    {
        for (const auto& piece : woodSolids(limb))
            add(piece);
    }
    [[nodiscard]] const std::vector<Polygon>& all() const { return all_; }

private:
    void add(Curtain solid)
    {
        solid.a += base_m_;
        solid.b += base_m_;
        auto outline = shadowOutline(solid, towards_, ground_);
        if (outline.size() >= 3)
            all_.push_back(std::move(outline));
    }

    Vec3 base_m_;
    Vec3 towards_;
    Ground ground_;
    std::vector<Polygon> all_;
};

} // namespace

Polygon shadowOutline(const Curtain& solid, Vec3 towards, const Ground& ground)
{
    const Dropper dropper(towards, ground);
    if (!dropper.lights())
        return {};
    std::vector<Point2> points;
    const auto all = corners(solid);
    for (std::size_t i = 0; i < (solid.hang_m > 0.0 ? 4U : 2U); ++i)
        dropper.ball(all[i], solid.radius_m, points);
    return points.size() < 3 ? Polygon{} : convexHull(points);
}

Polygon shadowOutline(const Ellipsoid& crown, Vec3 towards, const Ground& ground)
{
    const Dropper dropper(towards, ground);
    if (!dropper.lights())
        return {};
    std::vector<Point2> points;
    dropper.ellipsoid(crown, points);
    return convexHull(points);
}

Region shadow(const Neighbour& neighbour, const SunPosition& sun, const Ground& ground)
{
    if (sun.elevation_deg < kLowestSun_deg)
        return {};
    const Vec3 towards = towardsSun(sun);
    const Ellipsoid crown = crownOf(neighbour, ground);
    std::vector<Polygon> outlines{shadowOutline(crown, towards, ground)};
    if (neighbour.stemDiameter_m)
        outlines.push_back(shadowOutline(Curtain{ground.at(neighbour.position_m), crown.middle_m,
                                                 *neighbour.stemDiameter_m / 2.0, 0.0},
                                         towards, ground));
    std::erase_if(outlines, [](const Polygon& outline) { return outline.size() < 3; });
    return unite(outlines);
}

Region shadow(const Limb& limb, Point2 tree_m, const SunPosition& sun, const Ground& ground)
{
    if (sun.elevation_deg < kLowestSun_deg)
        return {};
    std::vector<LeafyBody> bodies;
    appendLeafyBodies(limb, 0, bodies);
    Outlines outlines(tree_m, sun, ground);
    outlines.add(bodies);
    outlines.add(limb);
    return unite(outlines.all());
}

Region shadow(const Tree& tree, const SunPosition& sun, const Ground& ground)
{
    if (sun.elevation_deg < kLowestSun_deg)
        return {};
    Outlines outlines(tree.position_m, sun, ground);
    outlines.add(leafyBodies(tree));
    for (const auto& limb : tree.limbs)
        outlines.add(limb);
    return unite(outlines.all());
}

} // namespace model::light
