#include "model/light/prism.hpp"

#include <algorithm>
#include <cmath>

namespace model::light {
namespace {

constexpr double kGlass = 0.7;

double across(Point2 a, Point2 b)
{
    return a.x * b.y - a.y * b.x;
}
double along(Point2 a, Point2 b)
{
    return a.x * b.x + a.y * b.y;
}

/// Whether the stretch from `p` to `p + run` meets the edge from `a` to `b`.
bool meets(Point2 p, Point2 run, Point2 a, Point2 b)
{
    const Point2 edge = b - a;
    const double turn = across(run, edge);
    if (turn == 0.0) // parallel: the neighbouring edges decide
        return false;
    const double t = across(a - p, edge) / turn;
    const double u = across(a - p, run) / turn;
    return t >= 0.0 && t <= 1.0 && u >= 0.0 && u <= 1.0;
}

/// Even-odd rule; points on the edge may fall either way.
bool inside(const Polygon& outline, Point2 p)
{
    bool odd = false;
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
        const Point2 a = outline[i];
        const Point2 b = outline[j];
        if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x))
            odd = !odd;
    }
    return odd;
}

Prism upright(const Polygon& outline_m, double height_m, const Ground& ground)
{
    Point2 low = outline_m.front();
    Point2 high = low;
    Prism result;
    result.base_m = ground.height_m(low);
    for (const auto corner : outline_m) {
        low = {std::min(low.x, corner.x), std::min(low.y, corner.y)};
        high = {std::max(high.x, corner.x), std::max(high.y, corner.y)};
        result.base_m = std::min(result.base_m, ground.height_m(corner));
    }
    result.outline_m = outline_m;
    result.middle_m = 0.5 * (low + high);
    result.reach_m = norm(high - low) / 2.0;
    result.top_m = ground.height_m(result.middle_m) + height_m;
    return result;
}

} // namespace

std::optional<Prism> prism(const Structure& structure, const Ground& ground)
{
    if (structure.kind == StructureKind::pond || !(structure.height_m > 0.0))
        return std::nullopt;
    Prism result = upright(structure.outline_m, structure.height_m, ground);
    result.transmittance = structure.kind == StructureKind::glasshouse ? kGlass : 0.0;
    return result;
}

std::optional<Prism> prism(const Planting& planting, const Ground& ground)
{
    const bool woody = planting.kind == PlantingKind::hedge || planting.kind == PlantingKind::shrub;
    if (!woody || !(planting.height_m > 0.0))
        return std::nullopt;
    Prism result = upright(planting.outline_m, planting.height_m, ground);
    result.planting = planting.id;
    return result;
}

double transmittance(const Prism& prism, Vec3 from, Vec3 direction)
{
    const double rise = prism.top_m - from.z;
    if (rise <= 0.0 || direction.z <= 0.0)
        return 1.0;
    const Point2 start = plan(from);
    const Point2 run = (rise / direction.z) * plan(direction);
    const double length = norm(run);
    const Point2 ahead = prism.middle_m - start;
    const double nearest =
        length > 0.0 ? std::clamp(along(ahead, run) / (length * length), 0.0, 1.0) : 0.0;
    if (norm(ahead - nearest * run) > prism.reach_m)
        return 1.0;
    if (inside(prism.outline_m, start))
        return prism.transmittance;
    for (std::size_t i = 0, j = prism.outline_m.size() - 1; i < prism.outline_m.size(); j = i++)
        if (meets(start, run, prism.outline_m[j], prism.outline_m[i]))
            return prism.transmittance;
    return 1.0;
}

double transmittance(const std::vector<Prism>& prisms, Vec3 from, Vec3 direction)
{
    double through = 1.0;
    for (const auto& one : prisms) {
        through *= transmittance(one, from, direction);
        if (through == 0.0)
            break;
    }
    return through;
}

} // namespace model::light
