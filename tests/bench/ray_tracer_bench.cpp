// The season's rays through this program and through a general-purpose ray tracer, one core, the
// same rays, the same bodies. Refuses to time answers that differ.
#include "tests/bench/ray_tracer.hpp"
#include "tests/bench/season_scene.hpp"

#include <benchmark/benchmark.h>

#include <array>
#include <cmath>

using namespace model;
using namespace model::light;

namespace {

/// How far the tracer's light may be from ours, in share of a season's mean at a point and of any
/// single ray: float leaves that much at a ray that only grazes a body.
constexpr double kMeanApart = 2e-6;
constexpr double kRayApart = 2e-3;

struct Season {
    Canopy tree;
    std::vector<Vec3> suns;
    std::vector<Vec3> points; ///< in packs of eight neighbours
};

Season season(int bodies)
{
    Season result{bench::roundTree(bodies), bench::sunsOfSeason(), {}};
    const auto lawn = bench::lawn();
    for (const auto& pack : packed(lawn, {}))
        for (std::size_t i = 0; i < pack.count; ++i)
            result.points.push_back(lawn[pack.point[i]]);
    return result;
}

std::vector<float> rayByRay(const Season& season, bench::RayTracer& tracer)
{
    std::vector<float> sums(season.points.size());
    for (const Vec3 towards : season.suns) {
        const auto extinction = static_cast<float>(extinction_1_m(season.tree, towards));
        for (std::size_t p = 0; p < sums.size(); ++p)
            sums[p] += tracer.through(season.points[p], towards, extinction);
    }
    return sums;
}

std::vector<float> byPackets(const Season& season, bench::RayTracer& tracer)
{
    std::vector<float> sums(season.points.size());
    std::array<float, 8> shares{};
    for (const Vec3 towards : season.suns) {
        const auto extinction = static_cast<float>(extinction_1_m(season.tree, towards));
        for (std::size_t first = 0; first < sums.size(); first += 8) {
            const std::size_t count = std::min<std::size_t>(8, sums.size() - first);
            tracer.through(&season.points[first], count, towards, extinction, shares.data());
            for (std::size_t i = 0; i < count; ++i)
                sums[first + i] += shares[i];
        }
    }
    return sums;
}

/// Nothing while the tracer gives the light that we give; else what is wrong.
const char* complaint(const Season& season, bench::RayTracer& tracer)
{
    const auto ours = bench::tracedSeason(season.tree, season.points, season.suns);
    const auto rays = rayByRay(season, tracer);
    const auto packets = byPackets(season, tracer);
    double shaded = 0.0;
    for (std::size_t p = 0; p < ours.size(); ++p) {
        const auto count = static_cast<double>(season.suns.size());
        if (std::abs(rays[p] - ours[p]) > kMeanApart * count ||
            std::abs(packets[p] - ours[p]) > kMeanApart * count)
            return "the tracer's season differs from ours";
        shaded += 1.0 - ours[p] / count;
    }
    if (!(shaded > 1.0))
        return "nothing is in the shade";
    for (std::size_t s = 0; s < season.suns.size(); s += 97) {
        const Vec3 towards = season.suns[s];
        const auto one = bench::tracedSeason(season.tree, season.points, {towards});
        const auto extinction = static_cast<float>(extinction_1_m(season.tree, towards));
        for (std::size_t p = 0; p < one.size(); ++p)
            if (std::abs(tracer.through(season.points[p], towards, extinction) - one[p]) >
                kRayApart)
                return "the tracer's ray differs from ours";
    }
    return nullptr;
}

template <typename Trace>
void timed(benchmark::State& state, const Trace& trace)
{
    const Season rays = season(static_cast<int>(state.range(0)));
    bench::RayTracer tracer(rays.tree);
    if (const char* wrong = complaint(rays, tracer)) {
        state.SkipWithError(wrong);
        return;
    }
    for (auto _ : state)
        benchmark::DoNotOptimize(trace(rays, tracer));
    bench::countRays(state, rays.points.size() * rays.suns.size());
}

void seasonByUs(benchmark::State& state)
{
    timed(state, [](const Season& season, bench::RayTracer&) {
        return bench::tracedSeason(season.tree, season.points, season.suns);
    });
}
void seasonByTracerRayByRay(benchmark::State& state)
{
    timed(state, rayByRay);
}
void seasonByTracerInPackets(benchmark::State& state)
{
    timed(state, byPackets);
}
BENCHMARK(seasonByUs)->Arg(60)->Arg(1000)->Unit(benchmark::kMillisecond);
BENCHMARK(seasonByTracerRayByRay)->Arg(60)->Arg(1000)->Unit(benchmark::kMillisecond);
BENCHMARK(seasonByTracerInPackets)->Arg(60)->Arg(1000)->Unit(benchmark::kMillisecond);

} // namespace
