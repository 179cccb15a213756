#include "model/crown/union_volume.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace model {
namespace {

constexpr double kGolden = 1.0 / std::numbers::phi;

/// A body as plumb lines meet it: convex, so each line is inside from its underside to its top.
struct Plumbed {
    Curtain solid;
    Curtain upsideDown; ///< its underside is the top, seen from above
    double west{};
    double east{};
    double south{};
    double north{};

    explicit Plumbed(const Curtain& curtain) : solid(curtain), upsideDown(curtain)
    {
        const double r = solid.radius_m;
        upsideDown.a.z = solid.hang_m - solid.a.z;
        upsideDown.b.z = solid.hang_m - solid.b.z;
        west = std::min(solid.a.x, solid.b.x) - r;
        east = std::max(solid.a.x, solid.b.x) + r;
        south = std::min(solid.a.y, solid.b.y) - r;
        north = std::max(solid.a.y, solid.b.y) + r;
    }

    [[nodiscard]] std::optional<Interval> inside(Point2 at) const
    {
        if (at.y < south || at.y > north)
            return std::nullopt; // most bodies miss most lines
        const auto bottom = undersideHeight_m(solid, at);
        const auto top = undersideHeight_m(upsideDown, at);
        return bottom && top ? std::optional(Interval{*bottom, -*top}) : std::nullopt;
    }
};

/// Length of the union of stretches; sorts them.
double unionLength(std::vector<Interval>& stretches)
{
    std::ranges::sort(stretches, {}, &Interval::from);
    double length = 0.0;
    double reached = -std::numeric_limits<double>::infinity();
    for (const auto& part : stretches) {
        length += std::max(0.0, part.to - std::max(part.from, reached));
        reached = std::max(reached, part.to);
    }
    return length;
}

} // namespace

double unionVolume_m3(const std::vector<LeafyBody>& bodies, double spacing_m)
{
    if (bodies.empty())
        return 0.0;
    std::vector<Plumbed> plumbed;
    for (const auto& body : bodies)
        plumbed.emplace_back(body.solid);
    const double west = std::ranges::min(plumbed, {}, &Plumbed::west).west;
    const double east = std::ranges::max(plumbed, {}, &Plumbed::east).east;
    const double south = std::ranges::min(plumbed, {}, &Plumbed::south).south;
    const double north = std::ranges::max(plumbed, {}, &Plumbed::north).north;
    double length = 0.0;
    std::vector<Interval> inside;
    std::vector<const Plumbed*> row; // bodies that the lines of one row can meet
    double shift = 0.5;
    for (double x = west + spacing_m / 2.0; x < east; x += spacing_m) {
        // Each row is shifted by the golden section, so that no rows line up along a round side.
        shift = shift + kGolden - std::floor(shift + kGolden);
        row.clear();
        for (const auto& body : plumbed)
            if (x >= body.west && x <= body.east)
                row.push_back(&body);
        for (double y = south + (shift - 1.0) * spacing_m; y < north; y += spacing_m) {
            inside.clear();
            for (const auto* body : row)
                if (const auto part = body->inside({x, y}))
                    inside.push_back(*part);
            length += unionLength(inside);
        }
    }
    return length * spacing_m * spacing_m;
}

} // namespace model
