#include "model/light/surface.hpp"

#include "model/geometry/angle.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>

namespace model::light {
namespace {

/// About this many points on a surface: the mean over it is then within 1 % (light.md, L19).
constexpr double kPoints = 64.0;
constexpr double kWidestSpacing_m = 1.0;

/// Twice the signed area: positive when the corners run counter-clockwise.
double turn(const Polygon& outline)
{
    double sum = 0.0;
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++)
        sum += outline[j].x * outline[i].y - outline[i].x * outline[j].y;
    return sum;
}

struct Edge {
    Point2 from;
    Point2 to;
    double facing_deg{};
};

std::vector<Edge> outwardEdges(const Planting& planting)
{
    const auto& outline = planting.outline_m;
    const double side = turn(outline) > 0.0 ? 1.0 : -1.0;
    std::vector<Edge> edges;
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
        const Point2 along = outline[i] - outline[j];
        const double bearing = degrees(std::atan2(side * along.y, -side * along.x));
        edges.push_back({outline[j], outline[i], bearing < 0.0 ? bearing + 360.0 : bearing});
    }
    return edges;
}

void addPoints(const Edge& edge, double height_m, Vec3 normal, const Ground& ground,
               std::vector<Vec3>& points)
{
    constexpr double kOff_m = 0.01; // clear of the leaves of the hedge itself
    const double length = norm(edge.to - edge.from);
    const auto count = std::max(1.0, std::ceil(length / kWidestSpacing_m));
    for (double i = 0.5; i < count; i += 1.0) {
        const Point2 at = edge.from + (i / count) * (edge.to - edge.from);
        for (const double share : {0.25, 0.75})
            points.push_back(ground.at(at, share * height_m) + kOff_m * normal);
    }
}

} // namespace

double facing(const Surface& surface, Vec3 towards)
{
    if (dot(surface.groundNormal, towards) <= 0.0)
        return 0.0;
    return std::max(0.0, dot(surface.normal, towards));
}

Surface levelSurface(const Planting& planting, const Ground& ground)
{
    const double spacing =
        std::min(kWidestSpacing_m, std::sqrt(area_m2(planting.outline_m) / kPoints));
    Surface surface;
    surface.planting = planting.id;
    surface.normal = surface.groundNormal = ground.normal();
    for (const auto at : gridPoints(planting.outline_m, spacing))
        surface.points_m.push_back(ground.at(at, planting.height_m));
    return surface;
}

std::vector<Surface> faces(const Planting& planting, const Ground& ground)
{
    if (planting.kind != PlantingKind::hedge || !(planting.height_m > 0.0))
        return {};
    constexpr double kPointOfCompass_deg = 45.0;
    std::array<std::vector<Edge>, 8> byPoint;
    for (const auto& edge : outwardEdges(planting))
        byPoint[static_cast<std::size_t>(std::lround(edge.facing_deg / kPointOfCompass_deg)) % 8]
            .push_back(edge);
    std::vector<Surface> result;
    for (const auto& edges : byPoint) {
        if (edges.empty())
            continue;
        Vec3 sum{};
        for (const auto& edge : edges) // the long ones decide where the face looks
            sum += norm(edge.to - edge.from) * bearingDirection(edge.facing_deg);
        Surface face;
        face.planting = planting.id;
        face.normal = (1.0 / norm(sum)) * sum;
        face.groundNormal = ground.normal();
        const double bearing = degrees(std::atan2(face.normal.x, face.normal.y));
        face.facing_deg = bearing < 0.0 ? bearing + 360.0 : bearing;
        for (const auto& edge : edges)
            addPoints(edge, planting.height_m, face.normal, ground, face.points_m);
        result.push_back(std::move(face));
    }
    return result;
}

MapGrid mapGrid(Point2 low, Point2 high, double spacing_m, double height_m, const Ground& ground)
{
    if (!(spacing_m > 0.0 && low.x < high.x && low.y < high.y))
        throw std::domain_error("mapGrid: need low < high and a spacing over 0");
    MapGrid grid;
    grid.surface.normal = grid.surface.groundNormal = ground.normal();
    const auto count = [spacing_m](double extent) {
        return static_cast<std::size_t>(std::max(1.0, std::floor(extent / spacing_m)));
    };
    grid.columns = count(high.x - low.x);
    grid.rows = count(high.y - low.y);
    grid.spacing_m = spacing_m;
    const Point2 middle = 0.5 * (low + high);
    const auto half = [spacing_m](std::size_t points) {
        return 0.5 * spacing_m * static_cast<double>(points - 1);
    };
    grid.first_m = middle - Point2{half(grid.columns), half(grid.rows)};
    for (std::size_t row = 0; row < grid.rows; ++row)
        for (std::size_t column = 0; column < grid.columns; ++column)
            grid.surface.points_m.push_back(
                ground.at(grid.first_m + spacing_m * Point2{static_cast<double>(column),
                                                            static_cast<double>(row)},
                          height_m));
    return grid;
}

} // namespace model::light
