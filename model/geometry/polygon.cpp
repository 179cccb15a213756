#include "model/geometry/polygon.hpp"

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include <algorithm>
#include <cmath>

namespace bg = boost::geometry;

namespace model {
namespace {

using BgPoint = bg::model::d2::point_xy<double>;
using BgPolygon = bg::model::polygon<BgPoint>;
using BgMultiPolygon = bg::model::multi_polygon<BgPolygon>;
using BgLine = bg::model::linestring<BgPoint>;

BgPoint toBoost(Point2 p)
{
    return {p.x, p.y};
}

BgPolygon toBoost(const Polygon& outline)
{
    BgPolygon polygon;
    for (const auto corner : outline)
        bg::append(polygon.outer(), toBoost(corner));
    bg::correct(polygon);
    return polygon;
}

BgMultiPolygon toBoost(const Region& region)
{
    BgMultiPolygon many;
    for (const auto& part : region) {
        if (part.rings.empty())
            continue;
        BgPolygon polygon = toBoost(part.rings.front());
        for (std::size_t hole = 1; hole < part.rings.size(); ++hole) {
            polygon.inners().emplace_back();
            for (const auto corner : part.rings[hole])
                polygon.inners().back().push_back(toBoost(corner));
        }
        bg::correct(polygon);
        many.push_back(std::move(polygon));
    }
    return many;
}

template <typename Ring>
Polygon fromBoostRing(const Ring& ring)
{
    Polygon outline;
    for (const auto& corner : ring)
        outline.push_back({corner.x(), corner.y()});
    if (outline.size() > 1 && outline.front() == outline.back())
        outline.pop_back(); // Boost closes its rings, ours are open
    return outline;
}

Region fromBoost(const BgMultiPolygon& many)
{
    Region region;
    for (const auto& polygon : many) {
        PolygonWithHoles part;
        part.rings.push_back(fromBoostRing(polygon.outer()));
        for (const auto& hole : polygon.inners())
            part.rings.push_back(fromBoostRing(hole));
        region.push_back(std::move(part));
    }
    return region;
}

// Thinner shapes have no use in a garden, and sums over them no sense.
constexpr double kThinnest_m = 1e-3;

/// Width of the long rectangle with the same area and perimeter, nearly.
double meanWidth_m(const BgPolygon& polygon)
{
    const auto round = static_cast<double>(bg::perimeter(polygon));
    return round > 0.0 ? 2.0 * std::abs(bg::area(polygon)) / round : 0.0;
}

} // namespace

std::optional<std::string> polygonFault(const Polygon& outline)
{
    if (outline.size() < 3)
        return "needs at least three corners";
    const auto polygon = toBoost(outline);
    BgPolygon hull; // an outline that crosses itself may have no net area either
    bg::convex_hull(polygon, hull);
    if (meanWidth_m(hull) < kThinnest_m)
        return "is thinner than a millimetre";
    if (bg::intersects(polygon)) // the one-argument form asks for self-intersections
        return "has edges that cross";
    if (meanWidth_m(polygon) < kThinnest_m)
        return "is thinner than a millimetre";
    return std::nullopt;
}

double area_m2(const Polygon& outline)
{
    return outline.size() < 3 ? 0.0 : std::abs(bg::area(toBoost(outline)));
}

double area_m2(const Region& region)
{
    return bg::area(toBoost(region));
}

bool covers(const Polygon& outline, Point2 point)
{
    return bg::covered_by(toBoost(point), toBoost(outline));
}

Region unite(const std::vector<Polygon>& shapes)
{
    // Halves are united first: adding one shape at a time to an ever larger outline is quadratic.
    std::vector<BgMultiPolygon> parts;
    parts.reserve(shapes.size());
    for (const auto& shape : shapes)
        parts.push_back({toBoost(shape)});
    while (parts.size() > 1) {
        std::vector<BgMultiPolygon> halved;
        for (std::size_t i = 0; i + 1 < parts.size(); i += 2) {
            BgMultiPolygon sum;
            bg::union_(parts[i], parts[i + 1], sum);
            halved.push_back(std::move(sum));
        }
        if (parts.size() % 2 == 1)
            halved.push_back(std::move(parts.back()));
        parts = std::move(halved);
    }
    return parts.empty() ? Region{} : fromBoost(parts.front());
}

Region intersect(const Region& a, const Region& b)
{
    if (a.empty() && b.empty())
        return {}; // Boost 1.74 would copy a scale that it has not set
    BgMultiPolygon shared;
    bg::intersection(toBoost(a), toBoost(b), shared);
    return fromBoost(shared);
}

Region toRegion(const Polygon& outline)
{
    return {PolygonWithHoles{{outline}}};
}

Polygon convexHull(const std::vector<Point2>& points)
{
    bg::model::multi_point<BgPoint> cloud;
    for (const auto p : points)
        cloud.push_back(toBoost(p));
    BgPolygon hull;
    bg::convex_hull(cloud, hull);
    return fromBoostRing(hull.outer());
}

double distance_m(const std::vector<Point2>& line, const Polygon& outline)
{
    BgLine path;
    for (const auto p : line)
        path.push_back(toBoost(p));
    return bg::distance(path, toBoost(outline));
}

Point2 centroid(const Polygon& outline)
{
    BgPoint centre;
    bg::centroid(toBoost(outline), centre);
    return {centre.x(), centre.y()};
}

} // namespace model
