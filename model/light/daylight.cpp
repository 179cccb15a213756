#include "model/light/daylight.hpp"

#include "model/light/scene.hpp"
#include "model/light/sun_path.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace model::light {
namespace {

constexpr std::chrono::seconds kStep{std::chrono::minutes{10}};

/// About this many points on a planting: the mean over it is then within 1 % (L19).
constexpr double kPoints = 64.0;
constexpr double kWidestSpacing_m = 1.0;

std::vector<Vec3> receivers(const Planting& planting)
{
    const double spacing =
        std::min(kWidestSpacing_m, std::sqrt(area_m2(planting.outline_m) / kPoints));
    std::vector<Vec3> points;
    for (const auto at : gridPoints(planting.outline_m, spacing))
        points.push_back({at.x, at.y, planting.height_m});
    return points;
}

/// Adds what one ray of sun brings to one point, as things stand and with each tree away.
void addRay(const RayLight& light, double hours, PlantingSun& sum, double& sunAtPoint_h)
{
    double all = light.structures;
    for (const double through : light.trees)
        all *= through;
    sunAtPoint_h += hours * all;
    sum.sun_h += hours * all;
    sum.withoutTrees_h += hours * light.structures;
    for (std::size_t i = 0; i < light.trees.size(); ++i) {
        double others = all;
        if (light.trees[i] < 1.0) { // dividing it out again would fail behind its trunk
            others = light.structures;
            for (std::size_t j = 0; j < light.trees.size(); ++j)
                others *= j == i ? 1.0 : light.trees[j];
        }
        sum.trees[i].sunWithout_h += hours * others;
    }
}

void takeMeans(PlantingSun& sum)
{
    const auto count = static_cast<double>(sum.points_m.size());
    sum.sun_h /= count;
    sum.withoutTrees_h /= count;
    for (auto& tree : sum.trees) {
        tree.sunWithout_h /= count;
        tree.lost_h = tree.sunWithout_h - sum.sun_h;
    }
}

PlantingSun sunOn(const Planting& planting, const Scene& scene, const std::vector<SunStep>& path)
{
    PlantingSun sum;
    sum.planting = planting.id;
    sum.trees.resize(scene.trees.size());
    for (const auto& step : path)
        sum.openSky_h += step.hours;
    RayLight light;
    for (const Vec3 point : receivers(planting)) {
        double sunAtPoint_h = 0.0;
        for (const auto& step : path) {
            trace(scene, point, step.towards, light);
            addRay(light, step.hours, sum, sunAtPoint_h);
        }
        sum.points_m.push_back(plan(point));
        sum.sunAtPoints_h.push_back(sunAtPoint_h);
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
    std::vector<PlantingSun> result;
    for (const auto& planting : garden.plantings) {
        result.push_back(sunOn(planting, lit, path));
        for (std::size_t i = 0; i < garden.trees.size(); ++i)
            result.back().trees[i].tree = garden.trees[i].id;
    }
    return result;
}

std::vector<PlantingSun> plantingSun(const Garden& garden, const Tables& tables,
                                     std::chrono::year_month_day date)
{
    return plantingSun(garden, foliations(garden, tables), tables, date);
}

} // namespace model::light
