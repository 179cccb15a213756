#include "app/solid/round_mesh.hpp"

#include "app/solid/directions.hpp"

#include <cmath>
#include <numbers>
#include <stdexcept>
#include <tuple>
#include <utility>

namespace app {
namespace {

using model::Vec3;

constexpr double kQuarter = std::numbers::pi / 2.0;

/// What the solid is rounded about: one point, two ends or four corners, counter-clockwise about
/// `across`, which is square to all of them.
struct Core {
    std::vector<Vec3> corners;
    Vec3 across{0.0, 0.0, 1.0};
};

Core coreOf(const model::Curtain& curtain)
{
    const Vec3 along = curtain.b - curtain.a;
    const Vec3 down{0.0, 0.0, -curtain.hang_m};
    const Vec3 across = cross(along, down);
    if (norm(across) > kOnePlace_m)
        return {{curtain.a, curtain.b, curtain.b + down, curtain.a + down}, unit(across)};
    if (curtain.hang_m > kOnePlace_m) { // along is upright, or nothing
        const auto& [low, high] = curtain.a.z < curtain.b.z ? std::pair{curtain.a, curtain.b}
                                                            : std::pair{curtain.b, curtain.a};
        return {{low + down, high}, squareTo({0.0, 0.0, 1.0})};
    }
    if (norm(along) > kOnePlace_m)
        return {{curtain.a, curtain.b}, squareTo(unit(along))};
    return {{curtain.a}};
}

/// A half circle from above the core to below it, about a corner.
struct Rib {
    std::size_t corner{};
    Vec3 out{}; ///< square to `across`, length one
};

/// Directions out of the core all round it: turning at each corner, the same at both ends of an
/// edge.
std::vector<Rib> ribs(const Core& core, int steps)
{
    const std::size_t count = core.corners.size();
    const auto outOfEdge = [&](std::size_t from) {
        if (count == 1)
            return squareTo(core.across);
        return unit(cross(core.corners[(from + 1) % count] - core.corners[from], core.across));
    };
    std::vector<Rib> all;
    for (std::size_t corner = 0; corner < count; ++corner) {
        const Vec3 first = outOfEdge((corner + count - 1) % count);
        const Vec3 last = outOfEdge(corner);
        double turn = std::atan2(dot(core.across, cross(first, last)), dot(first, last));
        if (count <= 2)
            turn = count == 1 ? 4.0 * kQuarter : 2.0 * kQuarter;
        const int pieces = std::max(1, static_cast<int>(std::ceil(turn / kQuarter * steps - 1e-9)));
        const Vec3 square = cross(core.across, first);
        for (int piece = 0; piece <= pieces; ++piece) {
            const double angle = turn * piece / pieces;
            all.push_back({corner, std::cos(angle) * first + std::sin(angle) * square});
        }
    }
    return all;
}

} // namespace

Mesh roundMesh(const model::Curtain& curtain, int steps)
{
    if (!(curtain.radius_m > 0.0) || steps < 1)
        throw std::domain_error("roundMesh: needs a positive radius and a step or more");
    const Core core = coreOf(curtain);
    const auto all = ribs(core, steps);
    const auto rows = static_cast<std::uint32_t>(2 * steps);

    Mesh mesh;
    for (const auto& rib : all)
        for (std::uint32_t row = 0; row <= rows; ++row) {
            const double down = kQuarter * row / steps; // from straight up
            const bool isPole = row == 0 || row == rows;
            const Vec3 normal =
                (isPole ? 0.0 : std::sin(down)) * rib.out + (row == 0      ? 1.0
                                                             : row == rows ? -1.0
                                                                           : std::cos(down)) *
                                                                core.across;
            mesh.add(core.corners[rib.corner] + curtain.radius_m * normal, normal);
        }
    for (std::uint32_t i = 0; i < all.size(); ++i) {
        const auto next = static_cast<std::uint32_t>((i + 1) % all.size());
        const bool turns = all[i].corner == all[next].corner; // else both poles are apart
        if (turns && next == 0)
            continue; // a lone point: its last rib is its first
        for (std::uint32_t row = 0; row < rows; ++row) {
            const std::uint32_t a = i * (rows + 1) + row;
            const std::uint32_t b = next * (rows + 1) + row;
            if (!turns || row + 1 < rows)
                mesh.triangles.push_back({a, a + 1, b + 1});
            if (!turns || row > 0)
                mesh.triangles.push_back({a, b + 1, b});
        }
    }
    if (core.corners.size() == 4) {
        const Vec3 up = curtain.radius_m * core.across;
        const auto& [a, b, c, d] =
            std::tie(core.corners[0], core.corners[1], core.corners[2], core.corners[3]);
        mesh.addFace(a + up, b + up, c + up);
        mesh.addFace(a + up, c + up, d + up);
        mesh.addFace(a - up, c - up, b - up);
        mesh.addFace(a - up, d - up, c - up);
    }
    return mesh;
}

Mesh roundMesh(const model::Ellipsoid& ellipsoid, int steps)
{
    Mesh mesh = roundMesh(model::Curtain{{}, {}, 1.0, 0.0}, steps);
    const auto& [middle, a, b, c] = ellipsoid;
    const auto shared = [](Vec3 axis) { return (1.0 / dot(axis, axis)) * axis; };
    for (std::size_t i = 0; i < mesh.places_m.size(); ++i) {
        const Vec3 on = mesh.places_m[i];
        mesh.places_m[i] = middle + on.x * a + on.y * b + on.z * c;
        mesh.normals[i] = unit(on.x * shared(a) + on.y * shared(b) + on.z * shared(c));
    }
    if (dot(cross(a, b), c) < 0.0) // mirrored
        for (auto& triangle : mesh.triangles)
            std::swap(triangle[1], triangle[2]);
    return mesh;
}

} // namespace app
