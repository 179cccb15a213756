#include "app/solid/tube.hpp"

#include "app/solid/directions.hpp"

#include <cmath>
#include <numbers>
#include <stdexcept>

namespace app {
namespace {

using model::Vec3;

/// A ring and how it lies.
struct Lying {
    TubeRing ring;
    Vec3 along{};     ///< square to the ring, towards the end
    Vec3 aside{};     ///< towards the ring's first place
    double narrows{}; ///< loss of radius per length, here
};

/// Mean of the walls that meet in each ring, turned no more about the path than it bends: each
/// `aside` is the one before, less what of it points along the path.
std::vector<Lying> laidOut(const std::vector<TubeRing>& rings)
{
    std::vector<Lying> lying;
    Vec3 aside{};
    for (std::size_t i = 0; i < rings.size(); ++i) {
        const auto& before = rings[i == 0 ? 0 : i - 1];
        const auto& after = rings[i + 1 == rings.size() ? i : i + 1];
        Vec3 along{};
        if (i > 0)
            along += unit(rings[i].middle_m - before.middle_m);
        if (i + 1 < rings.size())
            along += unit(after.middle_m - rings[i].middle_m);
        if (norm(along) < kOnePlace_m) // it turns right back
            along = rings[i].middle_m - before.middle_m;
        along = unit(along);
        aside = aside - dot(aside, along) * along;
        aside = norm(aside) > kOnePlace_m ? unit(aside) : squareTo(along);
        lying.push_back(
            {rings[i], along, aside,
             (before.radius_m - after.radius_m) / norm(after.middle_m - before.middle_m)});
    }
    return lying;
}

void addEnd(Mesh& mesh, const Lying& end, const std::vector<Vec3>& rim, bool first)
{
    const Vec3 out = first ? -1.0 * end.along : end.along;
    const auto middle = mesh.add(end.ring.middle_m, out);
    std::vector<std::uint32_t> corners;
    for (const auto place : rim)
        corners.push_back(mesh.add(place, out));
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const auto a = corners[i];
        const auto b = corners[(i + 1) % corners.size()];
        mesh.triangles.push_back(first ? Mesh::Triangle{middle, b, a}
                                       : Mesh::Triangle{middle, a, b});
    }
}

} // namespace

Mesh tube(std::span<const TubeRing> path, int sides)
{
    if (sides < 3)
        throw std::domain_error("tube: need three sides or more");
    std::vector<TubeRing> rings;
    for (const auto& ring : path) {
        if (!(ring.radius_m > 0.0))
            throw std::domain_error("tube: radius must be positive");
        if (rings.empty() || norm(ring.middle_m - rings.back().middle_m) > kOnePlace_m)
            rings.push_back(ring);
    }
    Mesh mesh;
    if (rings.size() < 2)
        return mesh;

    const auto lying = laidOut(rings);
    const auto count = static_cast<std::uint32_t>(sides);
    std::vector<Vec3> rim;
    for (std::size_t i = 0; i < lying.size(); ++i) {
        const auto& at = lying[i];
        const Vec3 other = cross(at.along, at.aside);
        rim.clear();
        for (std::uint32_t side = 0; side < count; ++side) {
            const double turn = 2.0 * std::numbers::pi * side / sides;
            const Vec3 out = std::cos(turn) * at.aside + std::sin(turn) * other;
            rim.push_back(at.ring.middle_m + at.ring.radius_m * out);
            mesh.add(rim.back(), unit(out + at.narrows * at.along));
        }
        if (i == 0)
            continue;
        const auto here = static_cast<std::uint32_t>(i) * count;
        const auto before = here - count;
        for (std::uint32_t side = 0; side < count; ++side) {
            const auto next = (side + 1) % count;
            mesh.triangles.push_back({before + side, before + next, here + next});
            mesh.triangles.push_back({before + side, here + next, here + side});
        }
    }
    addEnd(mesh, lying.back(), rim, false);
    const std::vector<Vec3> firstRim(mesh.places_m.begin(), mesh.places_m.begin() + sides);
    addEnd(mesh, lying.front(), firstRim, true);
    return mesh;
}

} // namespace app
