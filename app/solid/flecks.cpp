#include "app/solid/flecks.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <stdexcept>

namespace app {
namespace {

using model::Vec3;

constexpr double kLengthOverBreadth = 1.6; // a leafy spray; assumed, for looks

class Chance {
public:
    explicit Chance(std::uint32_t seed) : engine_(seed) {}
    /// Evenly between two numbers. Not std::uniform_real_distribution: its numbers differ from one
    /// library to another.
    double between(double from, double to)
    {
        constexpr double kAll = 4294967296.0;
        return from + (to - from) * (static_cast<double>(engine_()) / kAll);
    }
    Vec3 direction()
    {
        const double z = between(-1.0, 1.0);
        const double turn = between(0.0, 2.0 * std::numbers::pi);
        const double level = std::sqrt(std::max(0.0, 1.0 - z * z));
        return {level * std::cos(turn), level * std::sin(turn), z};
    }

private:
    std::mt19937 engine_;
};

struct Box {
    Vec3 low{1e9, 1e9, 1e9};
    Vec3 high{-1e9, -1e9, -1e9};
};

Box boxAround(const model::Curtain& body)
{
    Box box;
    const double r = body.radius_m;
    for (const auto& c : model::corners(body)) {
        box.low = {std::min(box.low.x, c.x - r), std::min(box.low.y, c.y - r),
                   std::min(box.low.z, c.z - r)};
        box.high = {std::max(box.high.x, c.x + r), std::max(box.high.y, c.y + r),
                    std::max(box.high.z, c.z + r)};
    }
    return box;
}

Box boxAround(const model::Ellipsoid& body)
{
    const double r = model::reach_m(body);
    const Vec3 corner{r, r, r};
    return {body.middle_m - corner, body.middle_m + corner};
}

/// Evenly within the body: strewn in a box around it until one hits.
template <typename Body>
Vec3 placeIn(const Body& body, const Box& box, Chance& chance)
{
    while (true) {
        const Vec3 at{chance.between(box.low.x, box.high.x), chance.between(box.low.y, box.high.y),
                      chance.between(box.low.z, box.high.z)};
        const auto inside = model::chord(body, {at.x, at.y, box.low.z}, {0.0, 0.0, 1.0});
        const double up = at.z - box.low.z;
        if (inside && inside->from <= up && up <= inside->to)
            return at;
    }
}

template <typename Body>
Mesh strewn(const Body& body, const FleckInput& input)
{
    if (!(input.fleck_m2 > 0.0) || !(input.leaf_m2 >= 0.0))
        throw std::domain_error("flecks: areas must be positive");
    Chance chance(input.seed);
    const Box box = boxAround(body);
    // A rhombus: half the product of its diagonals.
    const double breadth_m = std::sqrt(2.0 * input.fleck_m2 / kLengthOverBreadth);
    const double length_m = kLengthOverBreadth * breadth_m;

    Mesh mesh;
    const auto count = std::lround(input.leaf_m2 / input.fleck_m2);
    for (long i = 0; i < count; ++i) {
        const Vec3 at = placeIn(body, box, chance);
        const Vec3 normal = chance.direction();
        Vec3 along = cross(normal, chance.direction());
        while (norm(along) < 1e-3)
            along = cross(normal, chance.direction());
        along = (1.0 / norm(along)) * along;
        const Vec3 tip = (length_m / 2.0) * along;
        const Vec3 side = (breadth_m / 2.0) * cross(normal, along);
        for (const double face : {1.0, -1.0}) {
            const auto first = mesh.add(at + tip, face * normal);
            mesh.add(at + face * side, face * normal);
            mesh.add(at - tip, face * normal);
            mesh.add(at - face * side, face * normal);
            mesh.triangles.push_back({first, first + 1, first + 2});
            mesh.triangles.push_back({first, first + 2, first + 3});
        }
    }
    return mesh;
}

} // namespace

Mesh flecks(const model::Curtain& body, const FleckInput& input)
{
    return strewn(body, input);
}

Mesh flecks(const model::Ellipsoid& body, const FleckInput& input)
{
    return strewn(body, input);
}

} // namespace app
