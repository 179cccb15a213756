#pragma once

#include "model/light/canopy.hpp"
#include "model/light/daylight.hpp"
#include "model/light/scene_beam.hpp"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <vector>

/// The season that the benchmarks trace: a lawn of 400 points under one tree at 48 degrees north,
/// 214 days from 1 April in 72 steps of 20 minutes. Invented.
namespace bench {

inline constexpr int kDays = 214;
inline constexpr int kSteps = 72;

/// A round crown 10 m wide on a 3 m stem, of leafy bodies on limbs that turn by the golden angle;
/// whatever their number they hold about the same room.
inline model::light::Canopy roundTree(int bodies)
{
    using namespace model;
    light::Canopy tree;
    for (int i = 0; i < bodies; ++i) {
        const double share = (i + 0.5) / bodies;
        const double bearing = 2.399963 * i;
        const double height = 3.5 + 7.0 * share;
        const double reach = 4.6 * std::sqrt(std::max(0.05, 1.0 - std::pow(2.0 * share - 1.0, 2)));
        const Vec3 out{std::sin(bearing), std::cos(bearing), 0.25};
        const double size = std::cbrt(60.0 / bodies);
        const Vec3 tip = Vec3{0.0, 0.0, height} + reach * out;
        const Curtain solid{tip - (1.8 * size) * out, tip, 0.55 * size, 0.0};
        const double half = norm(solid.b - solid.a) / 2.0;
        tree.leaves.push_back({solid, 1.0, 0, {centre(solid), half + solid.radius_m}});
    }
    tree.bounds = {{0.0, 0.0, 7.0}, 8.0};
    tree.leafAreaDensity_1_m = 0.6;
    tree.leafAngleX = 2.2;
    return tree;
}

inline std::vector<model::Vec3> lawn()
{
    std::vector<model::Vec3> points;
    for (int x = 0; x < 20; ++x)
        for (int y = 0; y < 20; ++y)
            points.push_back({x - 9.5, y - 5.5, 0.0});
    return points;
}

/// The directions towards the sun while it is over the sunshine threshold; nights left out.
inline std::vector<model::Vec3> sunsOfSeason()
{
    using namespace std::chrono;
    std::vector<model::Vec3> suns;
    const auto first = sys_days{year{2025} / 4 / 1};
    for (int day = 0; day < kDays; ++day)
        for (int step = 0; step < kSteps; ++step) {
            const auto when =
                first + days{day} + milliseconds{86400000LL * (2 * step + 1) / (2 * kSteps)};
            const auto sun = model::light::sunPosition(when, 48.0, 0.0);
            if (sun.elevation_deg > 4.0)
                suns.push_back(model::light::towardsSun(sun));
        }
    return suns;
}

/// The share of light that the tree lets through to each point, summed over the directions.
inline std::vector<float> tracedSeason(const model::light::Canopy& tree,
                                       const std::vector<model::Vec3>& points,
                                       const std::vector<model::Vec3>& suns)
{
    using namespace model::light;
    const Scene scene{{tree}, {}};
    SceneBeam beam(scene, {});
    const auto lawn = receivers(points, {});
    std::vector<Lanes> sums(lawn.packs.size());
    PackLight light;
    for (const auto towards : suns) {
        beam.aim(towards);
        beam.turnTo(lawn);
        for (std::size_t p = 0; p < sums.size(); ++p) {
            beam.trace(p, light);
            for (std::size_t i = 0; i < kLanes; ++i)
                sums[p][i] += light.all[i];
        }
    }
    std::vector<float> result(points.size());
    for (std::size_t p = 0; p < sums.size(); ++p)
        for (std::size_t i = 0; i < lawn.packs[p].count; ++i)
            result[lawn.packs[p].point[i]] = sums[p][i];
    return result;
}

/// How many pairs of a ray and a body meet.
inline double pairsMet(const model::light::Canopy& tree, const std::vector<model::Vec3>& points,
                       const std::vector<model::Vec3>& suns)
{
    using namespace model::light;
    TreeBeam beam(tree, {});
    const auto packs = packed(points, {});
    Crossings crossings;
    double met = 0.0;
    for (const auto towards : suns) {
        const auto frame = beamFrame(towards);
        beam.aim(frame);
        for (const auto& pack : packs) {
            crossings.clear();
            beam.crossings(aimed(pack, frame), crossings);
            for (const auto& crossing : crossings.from(0))
                for (std::size_t i = 0; i < pack.count; ++i)
                    met += crossing.from[i] < kMissed ? 1.0 : 0.0;
        }
    }
    return met;
}

/// Time per ray, of those by day only and of all that the season has, in nanoseconds.
inline void countRays(benchmark::State& state, std::size_t raysByDay)
{
    const auto perRay = benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert;
    state.counters["ns_per_day_ray"] =
        benchmark::Counter(static_cast<double>(raysByDay) * 1e-9, perRay);
    state.counters["ns_per_ray"] = benchmark::Counter(kDays * kSteps * 400.0 * 1e-9, perRay);
}

} // namespace bench
