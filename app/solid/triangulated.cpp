#include "app/solid/triangulated.hpp"

#include <algorithm>

namespace app {
namespace {

using model::Point2;

/// Twice the area of a triangle; > 0 when it is counter-clockwise.
double turn(Point2 a, Point2 b, Point2 c)
{
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool isInside(Point2 p, Point2 a, Point2 b, Point2 c)
{
    return turn(a, b, p) >= 0.0 && turn(b, c, p) >= 0.0 && turn(c, a, p) >= 0.0;
}

bool isEar(const model::Polygon& outline, const std::vector<std::size_t>& left, std::size_t i)
{
    const auto at = [&](std::size_t j) { return outline[left[j % left.size()]]; };
    const Point2 a = at(i + left.size() - 1);
    const Point2 b = at(i);
    const Point2 c = at(i + 1);
    if (!(turn(a, b, c) > 0.0))
        return false;
    for (std::size_t j = i + 2; j < i + left.size() - 1; ++j)
        if (const Point2 p = at(j); p != a && p != b && p != c && isInside(p, a, b, c))
            return false;
    return true;
}

} // namespace

model::Polygon counterClockwise(model::Polygon outline)
{
    double twice_m2 = 0.0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 a = outline[i];
        const Point2 b = outline[(i + 1) % outline.size()];
        twice_m2 += a.x * b.y - b.x * a.y;
    }
    if (twice_m2 < 0.0)
        std::ranges::reverse(outline);
    return outline;
}

std::vector<std::array<std::size_t, 3>> triangulated(const model::Polygon& outline)
{
    std::vector<std::size_t> left(outline.size());
    for (std::size_t i = 0; i < left.size(); ++i)
        left[i] = i;
    std::vector<std::array<std::size_t, 3>> triangles;
    while (left.size() >= 3) {
        std::size_t ear = 0;
        while (ear < left.size() && !isEar(outline, left, ear))
            ++ear;
        if (ear == left.size())
            ear = 0; // only corners on one line are left: a triangle without area
        const auto before = left[(ear + left.size() - 1) % left.size()];
        triangles.push_back({before, left[ear], left[(ear + 1) % left.size()]});
        left.erase(left.begin() + static_cast<std::ptrdiff_t>(ear));
    }
    return triangles;
}

} // namespace app
