#include "model/advice/drop_zone.hpp"

#include "model/constants.hpp"
#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>

namespace model::advice {
namespace {

/// Where the rod's far end may lie if the hinge lets go `below` radians under the level (A10).
double reachLetGoAt_m(const Falling& piece, double below)
{
    const double half_m = piece.length_m / 2.0;
    const double from = radians(piece.slope_deg);
    const double spin2 =
        3.0 * kGravity_m_s2 * std::max(0.0, std::sin(from) + std::sin(below)) / piece.length_m;
    const double speed = half_m * std::sqrt(spin2);
    const double out_m = half_m * std::cos(below);
    const double drop_m = piece.height_m - half_m * std::sin(below);
    if (drop_m <= 0.0) // its middle has touched the ground while it hung on
        return piece.length_m;
    const double inwards = speed * std::sin(below);
    const double down = speed * std::cos(below);
    const double time =
        (std::sqrt(down * down + 2.0 * kGravity_m_s2 * drop_m) - down) / kGravity_m_s2;
    return std::abs(out_m - inwards * time) + half_m;
}

void note(std::vector<InZone>& all, const InZone& found)
{
    if (found.gap_m > found.radius_m)
        return;
    const auto known = std::ranges::find(all, found.id, &InZone::id);
    if (known == all.end())
        all.push_back(found);
    else if (found.gap_m < known->gap_m)
        *known = found;
}

double distanceToLine_m(const ElectricLine& line, Point2 place)
{
    double least_m = 1e9;
    for (std::size_t i = 1; i < line.path_m.size(); ++i) {
        const Point2 from = plan(line.path_m[i - 1]);
        const Point2 run = plan(line.path_m[i]) - from;
        const Point2 to = place - from;
        const double length2 = run.x * run.x + run.y * run.y;
        const double t =
            length2 > 0.0 ? std::clamp((to.x * run.x + to.y * run.y) / length2, 0.0, 1.0) : 0.0;
        least_m = std::min(least_m, norm(to - t * run));
    }
    return least_m;
}

double lowest_m(const ElectricLine& line)
{
    return std::ranges::min(line.path_m, {}, &Vec3::z).z;
}

} // namespace

double dropRadius_m(const Falling& piece)
{
    constexpr int kSteps = 90; // one or two degrees apart
    const double from = -radians(piece.slope_deg);
    const double straight = radians(90.0);
    double most_m = piece.length_m;
    for (int i = 0; i <= kSteps; ++i)
        most_m = std::max(most_m, reachLetGoAt_m(piece, from + (straight - from) * i / kSteps));
    return most_m;
}

std::vector<InZone> inDropZone(const Garden& garden, const Tree& tree,
                               std::span<const Piece> pieces)
{
    std::vector<InZone> all;
    for (const auto& piece : pieces) {
        const Point2 under = plan(piece.cut_m) + tree.position_m;
        const double radius_m = piece.dropRadius_m;
        const auto away_m = [&](const Polygon& outline) {
            return distance_m({under, under}, outline);
        };
        for (const auto& each : garden.structures)
            if (each.kind != StructureKind::pond)
                note(all, {Under::structure, each.id, away_m(each.outline_m), radius_m});
        for (const auto& each : garden.lines)
            if (lowest_m(each) <= piece.cut_m.z)
                note(all, {Under::line, each.id, distanceToLine_m(each, under), radius_m});
        for (const auto& each : garden.plantings)
            if (each.kind != PlantingKind::lawn)
                note(all, {Under::planting, each.id, away_m(each.outline_m), radius_m});
        for (const auto& each : garden.strips)
            note(all, {Under::strip, each.id, away_m(each.outline_m), radius_m});
    }
    return all;
}

} // namespace model::advice
