#pragma once

#include "model/geometry/vec3.hpp"

#include <optional>
#include <string>
#include <vector>

/// Plane shapes on the ground plan. The only folder that includes Boost.Geometry, and only in
/// its .cpp files: the headers of that library cost seconds per file that sees them.
namespace model {

/// A simple polygon: corners in order (either way round), not repeated at the end, metres.
using Polygon = std::vector<Point2>;

/// Several polygons, each with holes, that do not overlap. `rings[0]` is the outer ring.
struct PolygonWithHoles {
    std::vector<Polygon> rings;
};
using Region = std::vector<PolygonWithHoles>;

/// Why `outline` can't be used as a polygon, in a few words; nothing when it can.
/// Fewer than three corners, less than a millimetre of width, or edges that cross are reasons.
[[nodiscard]] std::optional<std::string> polygonFault(const Polygon& outline);

/// Area in m2, >= 0 for either winding.
[[nodiscard]] double area_m2(const Polygon& outline);
[[nodiscard]] double area_m2(const Region& region);

/// True inside and on the edge.
[[nodiscard]] bool covers(const Polygon& outline, Point2 point);

/// The union of simple polygons, which may overlap.
[[nodiscard]] Region unite(const std::vector<Polygon>& shapes);

/// What two regions share.
[[nodiscard]] Region intersect(const Region& a, const Region& b);
[[nodiscard]] Region toRegion(const Polygon& outline);

/// The convex hull of at least three points that don't lie on one line.
[[nodiscard]] Polygon convexHull(const std::vector<Point2>& points);

/// Least distance between a polyline on plan and a polygon (0 when they touch or overlap), m.
[[nodiscard]] double distance_m(const std::vector<Point2>& line, const Polygon& outline);

/// Centre of area, m.
[[nodiscard]] Point2 centroid(const Polygon& outline);

/// Points on a square grid inside a polygon without fault, `spacing_m` apart and centred on its
/// bounding box; at least one (the spacing is halved until the grid hits the polygon).
[[nodiscard]] std::vector<Point2> gridPoints(const Polygon& outline, double spacing_m);

} // namespace model
