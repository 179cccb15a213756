#include "model/geometry/ellipsoid.hpp"

#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model {
namespace {

/// In the frame in which the ellipsoid is the unit ball.
Vec3 inUnits(const Ellipsoid& e, Vec3 v)
{
    return {dot(v, e.a) / dot(e.a, e.a), dot(v, e.b) / dot(e.b, e.b), dot(v, e.c) / dot(e.c, e.c)};
}

} // namespace

Ellipsoid uprightEllipsoid(Vec3 middle_m, double bearing_deg, double along_m, double across_m,
                           double up_m)
{
    return {middle_m,
            along_m * bearingDirection(bearing_deg),
            across_m * bearingDirection(bearing_deg + 90.0),
            {0.0, 0.0, up_m}};
}

double volume_m3(const Ellipsoid& e)
{
    return 4.0 / 3.0 * std::numbers::pi * norm(e.a) * norm(e.b) * norm(e.c);
}

double reach_m(const Ellipsoid& e)
{
    return std::max({norm(e.a), norm(e.b), norm(e.c)});
}

std::optional<Interval> chord(const Ellipsoid& e, Vec3 from, Vec3 direction)
{
    const Vec3 p = inUnits(e, from - e.middle_m);
    const Vec3 d = inUnits(e, direction);
    const double A = dot(d, d);
    const double B = dot(p, d);
    const double room = B * B - A * (dot(p, p) - 1.0);
    if (!(room > 0.0))
        return std::nullopt;
    const double root = std::sqrt(room);
    const double to = (-B + root) / A;
    if (to <= 0.0)
        return std::nullopt;
    return Interval{std::max(0.0, (-B - root) / A), to};
}

PlaneEllipse projected(const Ellipsoid& e, Vec3 right, Vec3 up)
{
    PlaneEllipse s;
    for (const Vec3 axis : {e.a, e.b, e.c}) {
        const double x = dot(axis, right);
        const double y = dot(axis, up);
        s.xx += x * x;
        s.xy += x * y;
        s.yy += y * y;
    }
    return s;
}

double area_m2(const PlaneEllipse& s)
{
    return std::numbers::pi * std::sqrt(std::max(0.0, s.xx * s.yy - s.xy * s.xy));
}

} // namespace model
