// The ground, and what lies, stands and hangs on it.

#include "app/round/round_scene.hpp"

#include "app/solid/prism_mesh.hpp"
#include "app/solid/tube.hpp"
#include "model/geometry/angle.hpp"
#include "model/light/prism.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

// What lies on the ground is lifted off it, one kind over the other, so that each is seen whole.
constexpr double kLawn_m = 0.01;
constexpr double kStrip_m = 0.02;
constexpr double kBed_m = 0.03;
constexpr double kRing_m = 0.04;
constexpr double kWireRadius_m = 0.03; // thicker than a wire is, to be seen
constexpr double kBeyond_m = 6.0;      // ground shown beyond the last thing

HeightAt above(const model::Ground& ground, double over_m)
{
    return [ground, over_m](model::Point2 at) { return ground.height_m(at) + over_m; };
}

HeightAt level(double height_m)
{
    return [height_m](model::Point2) { return height_m; };
}

Mesh sheet(const model::Polygon& outline, const model::Ground& ground, double over_m)
{
    return prismMesh(outline, above(ground, -0.05), above(ground, over_m));
}

model::Polygon circle(model::Point2 middle, double radius_m, int corners)
{
    model::Polygon outline;
    for (int i = 0; i < corners; ++i)
        outline.push_back(middle + radius_m * plan(model::bearingDirection(-360.0 * i / corners)));
    return outline;
}

/// A hoop round the chosen tree, and a point on it to the north.
Mesh ring(const model::Tree& tree, const model::Ground& ground)
{
    constexpr int kPieces = 72;
    const double inner = ringRadius_m(tree);
    const double outer = 1.015 * inner;
    Mesh mesh;
    for (int i = 0; i < kPieces; ++i) {
        const auto at = [&](int piece, double r) {
            return tree.position_m + r * plan(model::bearingDirection(360.0 * piece / kPieces));
        };
        append(mesh, sheet({at(i, inner), at(i, outer), at(i + 1, outer), at(i + 1, inner)}, ground,
                           kRing_m));
    }
    const double size = 0.12 * inner;
    const model::Point2 root = tree.position_m + model::Point2{0.0, outer};
    append(mesh, sheet({root + model::Point2{-0.5 * size, 0.0}, root + model::Point2{0.0, size},
                        root + model::Point2{0.5 * size, 0.0}},
                       ground, kRing_m));
    return mesh;
}

void addPlanting(std::vector<RoundPart>& parts, const model::Planting& planting,
                 const model::Ground& ground)
{
    if (const auto prism = model::light::prism(planting, ground)) {
        addPart(parts,
                planting.kind == model::PlantingKind::hedge ? RoundKind::hedge : RoundKind::shrub,
                planting.id,
                prismMesh(planting.outline_m, level(prism->base_m), level(prism->top_m)));
        return;
    }
    const bool isLawn = planting.kind == model::PlantingKind::lawn;
    addPart(parts, isLawn ? RoundKind::lawn : RoundKind::bed, planting.id,
            sheet(planting.outline_m, ground, isLawn ? kLawn_m : kBed_m));
}

RoundKind kindOf(const model::Structure& structure)
{
    switch (structure.kind) {
    case model::StructureKind::fence:
        return RoundKind::fence;
    case model::StructureKind::glasshouse:
        return RoundKind::glasshouse;
    case model::StructureKind::pond:
        return RoundKind::pond;
    case model::StructureKind::building:
    case model::StructureKind::chimney:
    case model::StructureKind::other:
        break;
    }
    return RoundKind::building;
}

} // namespace

Disc groundDisc(const model::Garden& garden)
{
    std::vector<model::Point2> places;
    const auto takeAll = [&places](const auto& things) {
        for (const auto& thing : things)
            places.insert(places.end(), thing.outline_m.begin(), thing.outline_m.end());
    };
    takeAll(garden.plantings);
    takeAll(garden.strips);
    takeAll(garden.structures);
    const auto takeRound = [&places](model::Point2 middle, double r) {
        for (const auto corner : {model::Point2{r, 0.0}, {-r, 0.0}, {0.0, r}, {0.0, -r}})
            places.push_back(middle + corner);
    };
    for (const auto& tree : garden.trees)
        takeRound(tree.position_m, ringRadius_m(tree));
    for (const auto& neighbour : garden.neighbours)
        takeRound(neighbour.position_m, neighbour.spread_m / 2.0);
    if (places.empty())
        return {{}, 2.0 * kBeyond_m};
    const auto [west, east] = std::ranges::minmax(places, {}, &model::Point2::x);
    const auto [south, north] = std::ranges::minmax(places, {}, &model::Point2::y);
    Disc disc{{(west.x + east.x) / 2.0, (south.y + north.y) / 2.0}, 0.0};
    for (const auto place : places)
        disc.radius_m = std::max(disc.radius_m, norm(place - disc.middle_m));
    disc.radius_m += kBeyond_m;
    return disc;
}

void addGarden(std::vector<RoundPart>& parts, const RoundInput& input)
{
    const model::Ground ground(input.garden.slope);
    const auto disc = groundDisc(input.garden);
    addPart(parts, RoundKind::ground, {},
            prismMesh(circle(disc.middle_m, disc.radius_m, 96), above(ground, -0.4),
                      above(ground, 0.0)));
    for (const auto& planting : input.garden.plantings)
        addPlanting(parts, planting, ground);
    for (const auto& strip : input.garden.strips)
        addPart(parts, RoundKind::strip, strip.id, sheet(strip.outline_m, ground, kStrip_m));
    for (const auto& structure : input.garden.structures) {
        const auto prism = model::light::prism(structure, ground);
        addPart(
            parts, kindOf(structure), structure.id,
            prism ? prismMesh(structure.outline_m, level(prism->base_m - 0.05), level(prism->top_m))
                  : sheet(structure.outline_m, ground, kBed_m));
    }
    for (const auto& line : input.garden.lines) {
        std::vector<TubeRing> path;
        for (const auto& point : line.path_m)
            path.push_back({point, kWireRadius_m});
        addPart(parts, RoundKind::wire, line.id, tube(path, 6));
    }
    if (input.chosen)
        addPart(parts, RoundKind::ring, {}, ring(*input.chosen, ground));
}

} // namespace app
