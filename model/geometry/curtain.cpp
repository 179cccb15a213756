#include "model/geometry/curtain.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model {
namespace {

constexpr double kTiny_m = 1e-9;

/// Where a line is inside a ball, or nothing.
std::optional<Interval> insideBall(Vec3 from, Vec3 direction, Vec3 centreOfBall, double radius)
{
    const Vec3 offset = from - centreOfBall;
    const double half = dot(offset, direction);
    const double discriminant = half * half - dot(offset, offset) + radius * radius;
    if (discriminant <= 0.0)
        return std::nullopt;
    const double root = std::sqrt(discriminant);
    return Interval{-half - root, -half + root};
}

void extend(std::optional<Interval>& whole, std::optional<Interval> part)
{
    if (!part)
        return;
    if (!whole)
        whole = part;
    else
        whole = Interval{std::min(whole->from, part->from), std::max(whole->to, part->to)};
}

std::optional<Interval> overlap(Interval a, Interval b)
{
    const Interval both{std::max(a.from, b.from), std::min(a.to, b.to)};
    return both.from < both.to ? std::optional(both) : std::nullopt;
}

/// Where a line lies between two parallel planes: low <= p0 + t * slope <= high.
std::optional<Interval> betweenPlanes(double p0, double slope, double low, double high)
{
    if (std::abs(slope) < 1e-14) {
        if (p0 < low || p0 > high)
            return std::nullopt;
        return Interval{-1e300, 1e300};
    }
    const double t1 = (low - p0) / slope;
    const double t2 = (high - p0) / slope;
    return Interval{std::min(t1, t2), std::max(t1, t2)};
}

/// Where a line is inside the round side of a cylinder, between its end planes.
std::optional<Interval> insideCylinder(Vec3 from, Vec3 direction, Vec3 a, Vec3 b, double radius)
{
    const Vec3 axis = b - a;
    const double length = norm(axis);
    if (length < kTiny_m)
        return std::nullopt;
    const Vec3 unit = (1.0 / length) * axis;
    const Vec3 offset = from - a;
    const Vec3 across = direction - dot(direction, unit) * unit;
    const Vec3 apart = offset - dot(offset, unit) * unit;
    const double aa = dot(across, across);
    const double cc = dot(apart, apart) - radius * radius;
    std::optional<Interval> round;
    if (aa < 1e-18) {
        if (cc < 0.0)
            round = Interval{-1e300, 1e300};
    } else {
        const double bb = dot(apart, across);
        const double discriminant = bb * bb - aa * cc;
        if (discriminant > 0.0) {
            const double root = std::sqrt(discriminant);
            round = Interval{(-bb - root) / aa, (-bb + root) / aa};
        }
    }
    const auto ends = betweenPlanes(dot(offset, unit), dot(direction, unit), 0.0, length);
    return round && ends ? overlap(*round, *ends) : std::nullopt;
}

/// Where a line is inside the flat middle: the parallelogram thickened by the radius both ways.
std::optional<Interval> insideSlab(const Curtain& curtain, Vec3 from, Vec3 direction)
{
    const Vec3 along = curtain.b - curtain.a;
    const double level = std::hypot(along.x, along.y);
    if (level < kTiny_m || curtain.hang_m < kTiny_m)
        return std::nullopt;
    const Vec3 normal{-along.y / level, along.x / level, 0.0};
    const Vec3 offset = from - curtain.a;
    auto inside = betweenPlanes(dot(offset, normal), dot(direction, normal), -curtain.radius_m,
                                curtain.radius_m);
    // Along the level run, 0 at a and 1 at b; down the curtain, 0 at the limb and 1 at its hem.
    const Vec3 run{along.x / (level * level), along.y / (level * level), 0.0};
    const double u0 = dot(offset, run);
    const double u1 = dot(direction, run);
    const double v0 = (u0 * along.z - offset.z) / curtain.hang_m;
    const double v1 = (u1 * along.z - direction.z) / curtain.hang_m;
    for (const auto& limits : {betweenPlanes(u0, u1, 0.0, 1.0), betweenPlanes(v0, v1, 0.0, 1.0)})
        inside = inside && limits ? overlap(*inside, *limits) : std::nullopt;
    return inside;
}

/// Least of `slope * s - sqrt(room^2 - (s - s0)^2)` over s in [0, length], the lower edge of a row
/// of equal discs whose centres climb at `slope`. Nothing when no disc reaches s0.
std::optional<double> lowerEdge(double slope, double length, double s0, double room)
{
    const double from = std::max(0.0, s0 - room);
    const double to = std::min(length, s0 + room);
    if (from > to)
        return std::nullopt;
    const double best = std::clamp(s0 - slope * room / std::sqrt(1.0 + slope * slope), from, to);
    const double left = room * room - (best - s0) * (best - s0);
    return slope * best - std::sqrt(std::max(0.0, left));
}

} // namespace

std::array<Vec3, 4> corners(const Curtain& curtain)
{
    const Vec3 down{0.0, 0.0, -curtain.hang_m};
    return {curtain.a, curtain.b, curtain.b + down, curtain.a + down};
}

double volume_m3(const Curtain& curtain)
{
    const Vec3 along = curtain.b - curtain.a;
    const double r = curtain.radius_m;
    const double area = std::hypot(along.x, along.y) * curtain.hang_m;
    const double perimeter = 2.0 * (norm(along) + curtain.hang_m);
    return 2.0 * r * area + std::numbers::pi / 2.0 * r * r * perimeter +
           4.0 / 3.0 * std::numbers::pi * r * r * r;
}

Vec3 centre(const Curtain& curtain)
{
    return between(curtain.a, curtain.b, 0.5) - Vec3{0.0, 0.0, curtain.hang_m / 2.0};
}

std::optional<double> undersideHeight_m(const Curtain& curtain, Point2 at)
{
    const Vec3 along = curtain.b - curtain.a;
    const double level = std::hypot(along.x, along.y);
    const Point2 offset = at - plan(curtain.a);
    if (level < kTiny_m) { // upright: only the lower end shows from below
        const double off = norm(offset);
        if (off > curtain.radius_m)
            return std::nullopt;
        const double room = std::sqrt(curtain.radius_m * curtain.radius_m - off * off);
        return std::min(curtain.a.z, curtain.b.z) - curtain.hang_m - room;
    }
    const double s0 = (offset.x * along.x + offset.y * along.y) / level;
    const double aside = (offset.y * along.x - offset.x * along.y) / level;
    if (std::abs(aside) > curtain.radius_m)
        return std::nullopt;
    const double room = std::sqrt(curtain.radius_m * curtain.radius_m - aside * aside);
    const auto edge = lowerEdge(along.z / level, level, s0, room);
    return edge ? std::optional(curtain.a.z - curtain.hang_m + *edge) : std::nullopt;
}

Vec3 lowestPoint(const Curtain& curtain)
{
    const Vec3 end = curtain.a.z <= curtain.b.z ? curtain.a : curtain.b;
    return end - Vec3{0.0, 0.0, curtain.hang_m + curtain.radius_m};
}

Polygon footprint(const Curtain& curtain, int cornerSteps)
{
    // A stadium. Corners are put a little outside its round ends, by as much as gives the polygon
    // the stadium's own area: corners * R^2 + 2 * length * R = pi * r^2 + 2 * length * r.
    const Vec3 along = curtain.b - curtain.a;
    const double heading = std::atan2(along.y, along.x);
    const int steps = 2 * cornerSteps;
    const double step = std::numbers::pi / steps;
    const double length = std::hypot(along.x, along.y);
    const double corners = steps * std::sin(step);
    const double area = (std::numbers::pi * curtain.radius_m + 2.0 * length) * curtain.radius_m;
    const double reach = (std::sqrt(length * length + corners * area) - length) / corners;
    Polygon outline;
    for (const int half : {0, 1}) {
        const Point2 end = plan(half == 0 ? curtain.b : curtain.a);
        const double first = heading - std::numbers::pi / 2.0 + half * std::numbers::pi;
        for (int i = 0; i <= steps; ++i) {
            const double angle = first + i * step;
            outline.push_back(end + reach * Point2{std::cos(angle), std::sin(angle)});
        }
    }
    if (length < kTiny_m) { // a circle: both halves share their ends
        outline.pop_back();
        outline.erase(outline.begin() + steps);
    }
    return outline;
}

std::optional<Interval> chord(const Curtain& curtain, Vec3 from, Vec3 direction)
{
    std::optional<Interval> inside;
    const auto corner = corners(curtain);
    const bool hangs = curtain.hang_m > kTiny_m;
    for (std::size_t i = 0; i < 4; ++i) {
        if (i >= 2 && !hangs)
            break;
        extend(inside, insideBall(from, direction, corner[i], curtain.radius_m));
    }
    for (std::size_t i = 0; i < 4; ++i) {
        if (i >= 1 && !hangs)
            break;
        extend(inside,
               insideCylinder(from, direction, corner[i], corner[(i + 1) % 4], curtain.radius_m));
    }
    extend(inside, insideSlab(curtain, from, direction));
    if (!inside || inside->to <= 0.0)
        return std::nullopt;
    return Interval{std::max(0.0, inside->from), inside->to};
}

double frontalArea_m2(const Curtain& curtain, Vec3 levelDirection)
{
    // The shadow of the parallelogram thickened by the radius: area + perimeter r + pi r^2.
    const Vec3 along = curtain.b - curtain.a;
    const double across = std::abs(along.x * levelDirection.y - along.y * levelDirection.x);
    const double r = curtain.radius_m;
    return across * curtain.hang_m + 2.0 * (std::hypot(across, along.z) + curtain.hang_m) * r +
           std::numbers::pi * r * r;
}

} // namespace model
