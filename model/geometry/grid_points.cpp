#include "model/geometry/polygon.hpp"

#include <algorithm>
#include <cmath>

namespace model {
namespace {

/// Places `spacing` apart, centred between two ends; one at least.
struct Row {
    double first{};
    double count{};

    Row(double low, double high, double spacing)
        : count(std::max(1.0, std::floor((high - low) / spacing)))
    {
        first = (low + high) / 2.0 - (count - 1.0) / 2.0 * spacing;
    }
};

/// Where the outline crosses the level line at `y`, from west to east.
std::vector<double> crossings(const Polygon& outline, double y)
{
    std::vector<double> found;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 from = outline[i];
        const Point2 to = outline[(i + 1) % outline.size()];
        if ((from.y > y) != (to.y > y)) // a corner on the line belongs to one edge alone
            found.push_back(from.x + (y - from.y) / (to.y - from.y) * (to.x - from.x));
    }
    std::ranges::sort(found);
    return found;
}

} // namespace

std::vector<Point2> gridPoints(const Polygon& outline, double spacing_m)
{
    const auto [west, east] = std::ranges::minmax(outline, {}, &Point2::x);
    const auto [south, north] = std::ranges::minmax(outline, {}, &Point2::y);
    const Row columns(west.x, east.x, spacing_m);
    const Row rows(south.y, north.y, spacing_m);
    std::vector<Point2> points;
    // Row by row through the stretches inside, so that a thin polygon that lies askew costs its
    // own points and not those of the box round it.
    for (double row = 0.0; row < rows.count; row += 1.0) {
        const double y = rows.first + row * spacing_m;
        const auto cut = crossings(outline, y);
        for (std::size_t i = 0; i + 1 < cut.size(); i += 2) {
            const double least = std::ceil((cut[i] - columns.first) / spacing_m);
            const double most = std::floor((cut[i + 1] - columns.first) / spacing_m);
            for (double column = std::max(0.0, least);
                 column <= std::min(most, columns.count - 1.0); column += 1.0)
                points.push_back({columns.first + column * spacing_m, y});
        }
    }
    if (points.empty()) // thinner than the grid: a finer one finds it, since it has some width
        return gridPoints(outline, spacing_m / 2.0);
    return points;
}

} // namespace model
