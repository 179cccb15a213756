#include "model/geometry/simplify.hpp"

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/point_xy.hpp>

namespace bg = boost::geometry;

namespace model {

std::vector<std::size_t> simplified(std::span<const Point2> line, double tolerance_m)
{
    using Point = bg::model::d2::point_xy<double>;
    bg::model::linestring<Point> drawn;
    for (const auto p : line)
        drawn.emplace_back(p.x, p.y);
    bg::model::linestring<Point> kept;
    bg::simplify(drawn, kept, tolerance_m);

    std::vector<std::size_t> indices;
    std::size_t at = 0;
    for (const auto& point : kept) {
        while (at < line.size() && (line[at].x != point.x() || line[at].y != point.y()))
            ++at;
        if (at < line.size())
            indices.push_back(at++);
    }
    return indices;
}

} // namespace model
