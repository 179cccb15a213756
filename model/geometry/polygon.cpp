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

} // namespace

std::optional<std::string> polygonFault(const Polygon& outline)
{
    if (outline.size() < 3)
        return "needs at least three corners";
    constexpr double kNoArea_m2 = 1e-6;
    const auto polygon = toBoost(outline);
    BgPolygon hull; // an outline that crosses itself may have no net area either
    bg::convex_hull(polygon, hull);
    if (bg::area(hull) < kNoArea_m2)
        return "has no area";
    if (bg::intersects(polygon)) // the one-argument form asks for self-intersections
        return "has edges that cross";
    if (bg::area(polygon) < kNoArea_m2)
        return "has no area";
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

std::vector<Point2> gridPoints(const Polygon& outline, double spacing_m)
{
    const auto polygon = toBoost(outline);
    bg::model::box<BgPoint> box;
    bg::envelope(polygon, box);
    const auto axis = [spacing_m](double low, double high) {
        const double count = std::max(1.0, std::floor((high - low) / spacing_m));
        const double first = (low + high) / 2.0 - (count - 1.0) / 2.0 * spacing_m;
        std::vector<double> places;
        for (double i = 0.0; i < count; i += 1.0)
            places.push_back(first + i * spacing_m);
        return places;
    };
    const auto ys = axis(box.min_corner().y(), box.max_corner().y());
    std::vector<Point2> points;
    for (const double x : axis(box.min_corner().x(), box.max_corner().x()))
        for (const double y : ys)
            if (bg::within(BgPoint{x, y}, polygon))
                points.push_back({x, y});
    if (points.empty()) // thinner than the grid: a finer one finds it, since the area is not zero
        return gridPoints(outline, spacing_m / 2.0);
    return points;
}

} // namespace model
