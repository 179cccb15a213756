#include "model/light/daylight.hpp"

#include "model/light/scene_beam.hpp"
#include "model/light/sun_path.hpp"
#include "model/light/surface.hpp"

#include <stdexcept>

namespace model::light {
namespace {

constexpr std::chrono::seconds kStep{std::chrono::minutes{10}};

/// Adds what one pack of rays brings, as things stand and with each tree away. Lanes beyond the
/// pack's count are copies and count nothing.
void addPack(const Pack& pack, const PackLight& light, double hours, PlantingSun& sum)
{
    for (std::size_t i = 0; i < pack.count; ++i) {
        sum.sunAtPoints_h[pack.point[i]] += hours * light.all[i];
        sum.sun_h += hours * light.all[i];
        sum.withoutTrees_h += hours * light.structures[i];
    }
    for (const auto& tree : light.trees) {
        Lanes others = light.structures;
        for (const auto& other : light.trees) // dividing it out again would fail behind its trunk
            for (std::size_t i = 0; i < kLanes && other.tree != tree.tree; ++i)
                others[i] *= other.through[i];
        for (std::size_t i = 0; i < pack.count; ++i)
            sum.trees[tree.tree].lost_h += hours * (others[i] - light.all[i]);
    }
}

void takeMeans(PlantingSun& sum)
{
    const auto count = static_cast<double>(sum.points_m.size());
    sum.sun_h /= count;
    sum.withoutTrees_h /= count;
    for (auto& tree : sum.trees) {
        tree.lost_h /= count;
        tree.sunWithout_h = sum.sun_h + tree.lost_h;
    }
}

PlantingSun sunOn(const Planting& planting, const Ground& ground, const Scene& scene,
                  const std::vector<SunStep>& path)
{
    const auto surface = levelSurface(planting, ground);
    PlantingSun sum;
    sum.planting = planting.id;
    sum.trees.resize(scene.trees.size());
    sum.sunAtPoints_h.resize(surface.points_m.size());
    for (const Vec3 point : surface.points_m)
        sum.points_m.push_back(plan(point));
    const Vec3 origin = surface.points_m.front();
    const auto packs = receivers(surface.points_m, origin, surface.planting);
    SceneBeam beam(scene, origin);
    PackLight light;
    for (const auto& step : path) {
        if (!step.shines || facing(surface, step.towards) <= 0.0)
            continue;
        sum.openSky_h += step.hours;
        beam.aim(step.towards);
        beam.turnTo(packs);
        for (std::size_t p = 0; p < packs.packs.size(); ++p) {
            beam.trace(p, light);
            addPack(packs.packs[p], light, step.hours, sum);
        }
    }
    takeMeans(sum);
    return sum;
}

} // namespace

std::vector<Foliation> foliations(const Garden& garden, const Tables& tables)
{
    std::vector<Foliation> all;
    for (const auto& tree : garden.trees) {
        const Species* species = findSpecies(tables, tree.species);
        if (species == nullptr)
            throw std::domain_error("foliations: no species '" + tree.species + "' in the tables");
        all.push_back(foliate(tree, *species));
    }
    return all;
}

std::vector<PlantingSun> plantingSun(const Garden& garden, std::span<const Foliation> foliations,
                                     const Tables& tables, std::chrono::year_month_day date)
{
    const auto lit = scene(garden, foliations, tables, date);
    const auto path = sunPath(garden.place, date, kStep);
    const Ground ground(garden.slope);
    std::vector<PlantingSun> result;
    for (const auto& planting : garden.plantings) {
        result.push_back(sunOn(planting, ground, lit, path));
        for (std::size_t i = 0; i < garden.trees.size(); ++i)
            result.back().trees[i].tree = garden.trees[i].id;
        for (std::size_t i = 0; i < garden.neighbours.size(); ++i)
            result.back().trees[garden.trees.size() + i].tree = garden.neighbours[i].id;
    }
    return result;
}

std::vector<PlantingSun> plantingSun(const Garden& garden, const Tables& tables,
                                     std::chrono::year_month_day date)
{
    return plantingSun(garden, foliations(garden, tables), tables, date);
}

} // namespace model::light
