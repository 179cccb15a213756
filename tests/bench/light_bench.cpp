// Light: a season on a lawn under one tree (214 days x 72 steps of 20 minutes x 400 points, all
// days, nights cost nothing), a limb that moves, and a whole garden of 200 trees and 60 plantings.
#include "model/light/daylight.hpp"
#include "model/light/light_study.hpp"
#include "model/light/sun_path.hpp"
#include "tests/bench/season_scene.hpp"

#include <benchmark/benchmark.h>

#include <cmath>
#include <numbers>

using namespace model;
using namespace model::light;
using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::year;

namespace {

using bench::lawn;
using bench::roundTree;
using bench::sunsOfSeason;

void seasonByPacks(benchmark::State& state)
{
    const auto tree = roundTree(static_cast<int>(state.range(0)));
    const auto suns = sunsOfSeason();
    const auto points = lawn();
    for (auto _ : state)
        benchmark::DoNotOptimize(bench::tracedSeason(tree, points, suns));
    bench::countRays(state, points.size() * suns.size());
    const auto met = bench::pairsMet(tree, points, suns);
    state.counters["pairs_met"] = met;
    state.counters["ns_per_pair"] = benchmark::Counter(
        met * 1e-9, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}
BENCHMARK(seasonByPacks)->Arg(10)->Arg(60)->Arg(300)->Arg(1000)->Unit(benchmark::kMillisecond);

void seasonRayByRay(benchmark::State& state)
{
    const auto tree = roundTree(static_cast<int>(state.range(0)));
    const auto suns = sunsOfSeason();
    const auto points = lawn();
    for (auto _ : state) {
        double sum = 0.0;
        for (const Vec3 towards : suns)
            for (const Vec3 point : points)
                sum += transmittance(tree, point, towards);
        benchmark::DoNotOptimize(sum);
    }
    bench::countRays(state, points.size() * suns.size());
}
BENCHMARK(seasonRayByRay)->Arg(60)->Unit(benchmark::kMillisecond)->Iterations(1);

/// A tree of a trunk and `limbs` limbs with two leafy bodies each.
Tree drawnTree(const std::string& id, Point2 at, int limbs)
{
    Tree tree;
    tree.id = id;
    tree.species = "Arbor testis";
    tree.position_m = at;
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.3}, {{0, 0, 9}, 0.08}};
    tree.limbs.push_back(trunk);
    for (int i = 0; i < limbs; ++i) {
        const double bearing = 2.399963 * i;
        const double height = 2.5 + 6.0 * i / limbs;
        const Vec3 out{std::sin(bearing), std::cos(bearing), 0.35};
        const Vec3 foot{0, 0, height};
        Limb limb;
        limb.id = "limb " + std::to_string(i);
        limb.parent = "trunk";
        limb.attachedAt_m = height;
        limb.stations = {{foot, 0.1}, {foot + 2.0 * out, 0.05}, {foot + 3.8 * out, 0.02}};
        limb.foliage = Foliage{};
        limb.foliage->from_m = 0.8;
        limb.foliage->radius_m = 0.6;
        tree.limbs.push_back(limb);
    }
    return tree;
}

Tables oneSpecies()
{
    Tables tables;
    tables.species.emplace_back();
    tables.species.front().latin = "Arbor testis";
    return tables;
}

Planting bedAt(Point2 corner, double size_m)
{
    Planting planting;
    planting.id = "bed";
    planting.outline_m = {corner, corner + Point2{size_m, 0.0}, corner + Point2{size_m, size_m},
                          corner + Point2{0.0, size_m}};
    return planting;
}

/// A 400-point map of the growing season's sun, renewed as one limb is drawn elsewhere.
void moveOneLimb(benchmark::State& state)
{
    Garden garden;
    garden.place.latitude_deg = 48.0;
    garden.trees = {drawnTree("a", {0, 0}, 30), drawnTree("b", {9, -4}, 30)};
    const auto tables = oneSpecies();
    const auto sketched = foliations(garden, tables);
    StudyQuestion question;
    question.days = daysOfGrowingSeason(garden.place, year{2025}, 4);
    question.step = std::chrono::minutes{20};
    question.skyDirections = 0;
    const LightStudy study(garden, sketched, tables, 0, {mapGrid({-10, -6}, {10, 14}, 1.0).surface},
                           question);
    Tree tree = garden.trees[0];
    for (auto _ : state) {
        tree.limbs[5].stations.back().position_m.x += 1e-3;
        benchmark::DoNotOptimize(study.with(tree));
    }
}
BENCHMARK(moveOneLimb)->Unit(benchmark::kMillisecond);

/// A year of light on 60 plantings among 200 trees; 1: also limb by limb.
void wholeGarden(benchmark::State& state)
{
    Garden garden;
    garden.place.latitude_deg = 48.0;
    for (int i = 0; i < 200; ++i)
        garden.trees.push_back(
            drawnTree("tree " + std::to_string(i), {10.0 * (i % 20), 10.0 * (i / 20)}, 30));
    for (int i = 0; i < 60; ++i)
        garden.plantings.push_back(bedAt({20.0 * (i % 10) + 4.0, 16.0 * (i / 10) + 4.0}, 3.0));
    const auto tables = oneSpecies();
    const std::vector<Foliation> sketched(200, foliate(garden.trees[0], tables.species[0]));
    LightQuestion question;
    question.year = year{2025};
    question.detail.byLimb = state.range(0) == 1;
    for (auto _ : state)
        benchmark::DoNotOptimize(yearOfLight(garden, sketched, tables, question));
}
BENCHMARK(wholeGarden)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond)->Iterations(1)->UseRealTime();

void shadowOfATree(benchmark::State& state)
{
    const auto tree = drawnTree("a", {0, 0}, static_cast<int>(state.range(0)));
    double azimuth = 100.0;
    for (auto _ : state) {
        azimuth += 0.1;
        benchmark::DoNotOptimize(shadow(tree, {40.0, azimuth, 1.0}));
    }
}
BENCHMARK(shadowOfATree)->Arg(15)->Arg(60)->Unit(benchmark::kMillisecond);

void sunPositions(benchmark::State& state)
{
    auto when = sys_days{year{2025} / 4 / 1} + std::chrono::milliseconds{0};
    for (auto _ : state) {
        when += std::chrono::minutes{7};
        benchmark::DoNotOptimize(sunPosition(when, 48.0, 2.0));
    }
}
BENCHMARK(sunPositions);

} // namespace
