#include "model/advice/chimney.hpp"

#include "model/advice/limits.hpp"
#include "model/crown/leafy_bodies.hpp"
#include "model/geometry/segment.hpp"

#include <algorithm>

namespace model::advice {
namespace {

Vec3 mouthOf(const Structure& chimney, const Tree& tree)
{
    Point2 middle{};
    for (const auto& corner : chimney.outline_m)
        middle = middle + 1.0 / static_cast<double>(chimney.outline_m.size()) * corner;
    return {middle.x - tree.position_m.x, middle.y - tree.position_m.y, chimney.height_m};
}

double gap_m(const Tree& tree, Vec3 mouth)
{
    double least_m = 2.0 * kChimney_m;
    const auto look = [&](const auto& solid) {
        least_m = std::min(least_m, pointToSegment_m(mouth, solid.a, solid.b) - solid.radius_m);
    };
    for (const auto& body : leafyBodies(tree))
        look(body.solid);
    for (const auto& limb : tree.limbs)
        for (const auto& wood : woodSolids(limb))
            look(wood);
    return std::max(0.0, least_m);
}

} // namespace

std::vector<Finding> chimneyNotes(const Garden& garden, const Tree& tree)
{
    std::vector<Finding> notes;
    for (const auto& structure : garden.structures) {
        if (structure.kind != StructureKind::chimney || structure.outline_m.empty())
            continue;
        const double gap = gap_m(tree, mouthOf(structure, tree));
        if (gap < kChimney_m)
            notes.push_back({Rule::nearChimney, Severity::warn, structure.id, gap, kChimney_m});
    }
    return notes;
}

} // namespace model::advice
