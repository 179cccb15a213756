#include "model/crown/union_volume.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace model {
namespace {

/// True if the box round the curtain's outline holds a place: most bodies miss most lines.
bool stands(const Curtain& curtain, Point2 at)
{
    const double r = curtain.radius_m;
    return at.x >= std::min(curtain.a.x, curtain.b.x) - r &&
           at.x <= std::max(curtain.a.x, curtain.b.x) + r &&
           at.y >= std::min(curtain.a.y, curtain.b.y) - r &&
           at.y <= std::max(curtain.a.y, curtain.b.y) + r;
}

} // namespace

double unionVolume_m3(const std::vector<LeafyBody>& bodies, double spacing_m)
{
    if (bodies.empty())
        return 0.0;
    constexpr double kFar = std::numeric_limits<double>::infinity();
    double west = kFar;
    double east = -kFar;
    double south = kFar;
    double north = -kFar;
    double bottom = kFar;
    for (const auto& body : bodies) {
        for (const auto& corner : corners(body.solid)) {
            west = std::min(west, corner.x - body.solid.radius_m);
            east = std::max(east, corner.x + body.solid.radius_m);
            south = std::min(south, corner.y - body.solid.radius_m);
            north = std::max(north, corner.y + body.solid.radius_m);
            bottom = std::min(bottom, corner.z - body.solid.radius_m);
        }
    }
    const auto columns = static_cast<long>(std::ceil((east - west) / spacing_m));
    const auto rows = static_cast<long>(std::ceil((north - south) / spacing_m));
    double length = 0.0;
    std::vector<Interval> inside;
    for (long column = 0; column < columns; ++column) {
        for (long row = 0; row < rows; ++row) {
            const Vec3 foot{west + (static_cast<double>(column) + 0.5) * spacing_m,
                            south + (static_cast<double>(row) + 0.5) * spacing_m, bottom - 1.0};
            inside.clear();
            for (const auto& body : bodies)
                if (stands(body.solid, plan(foot)))
                    if (const auto part = chord(body.solid, foot, {0.0, 0.0, 1.0}))
                        inside.push_back(*part);
            std::ranges::sort(inside, {}, &Interval::from);
            double reached = -kFar;
            for (const auto& part : inside) {
                length += std::max(0.0, part.to - std::max(part.from, reached));
                reached = std::max(reached, part.to);
            }
        }
    }
    return length * spacing_m * spacing_m;
}

} // namespace model
