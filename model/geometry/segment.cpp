#include "model/geometry/segment.hpp"

#include <algorithm>

namespace model {
namespace {

constexpr double kParallel = 1e-12;

double shareOf(double value, double whole)
{
    return whole > 0.0 ? std::clamp(value / whole, 0.0, 1.0) : 0.0;
}

} // namespace

double pointToSegment_m(Vec3 point, Vec3 a, Vec3 b)
{
    const Vec3 run = b - a;
    return norm(point - between(a, b, shareOf(dot(point - a, run), dot(run, run))));
}

double segmentDistance_m(Vec3 a0, Vec3 a1, Vec3 b0, Vec3 b1)
{
    // The least lies between inner points of both lines, or at one of the four ends.
    double least = std::min({pointToSegment_m(a0, b0, b1), pointToSegment_m(a1, b0, b1),
                             pointToSegment_m(b0, a0, a1), pointToSegment_m(b1, a0, a1)});
    const Vec3 u = a1 - a0;
    const Vec3 v = b1 - b0;
    const Vec3 w = a0 - b0;
    const double uu = dot(u, u);
    const double uv = dot(u, v);
    const double vv = dot(v, v);
    const double determinant = uu * vv - uv * uv;
    if (determinant > kParallel * uu * vv) {
        const double s = (uv * dot(v, w) - vv * dot(u, w)) / determinant;
        const double t = (uu * dot(v, w) - uv * dot(u, w)) / determinant;
        if (s >= 0.0 && s <= 1.0 && t >= 0.0 && t <= 1.0)
            least = std::min(least, norm(between(a0, a1, s) - between(b0, b1, t)));
    }
    return least;
}

} // namespace model
