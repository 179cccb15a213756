#include "model/crown/silhouette.hpp"
#include "model/load/breaking_gust.hpp"
#include "model/load/limb_load.hpp"
#include "model/load/load_case.hpp"
#include "tests/model/load/samples.hpp"

#include <benchmark/benchmark.h>

namespace model::load {
namespace {

constexpr double kLimbs = 60.0;
constexpr double kStations = 12.0;
constexpr double kBearings = 36.0;

/// Draws every limb with twelve stations.
Tree finelyDrawn(Tree tree)
{
    for (auto& limb : tree.limbs) {
        const double length = length_m(limb);
        std::vector<Station> stations;
        for (double i = 0.0; i < kStations; i += 1.0) {
            const auto point = axisPoint(limb, length * i / (kStations - 1.0));
            stations.push_back({point.position_m, point.diameter_m, {}});
        }
        limb.stations = stations;
    }
    return tree;
}

/// 60 limbs: a stem, 11 scaffolds, 44 laterals on them, and four more on the stem.
const Tree& tree()
{
    static const Tree made = [] {
        Tree drawn = spreading(5, 11, 4);
        for (int i = 0; i < 4; ++i)
            drawn.limbs.push_back(leafy(growing(straight(std::to_string(100 + i), {0, 0, 3.4},
                                                         {0.3 * i, 1.0 - 0.4 * i, 8.0}, 0.1, 0.02),
                                                "stem", 3.4),
                                        1.0, 0.6));
        return finelyDrawn(std::move(drawn));
    }();
    return made;
}

/// Time for each station and bearing, the unit in which a load assessment is spoken of.
void perStationBearing(benchmark::State& state)
{
    state.counters["per station-bearing"] = benchmark::Counter(
        kLimbs * kStations * kBearings,
        benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

void wholeTree(benchmark::State& state)
{
    const auto species = redMaple();
    const auto foliation = foliate(tree(), species);
    for (auto _ : state)
        benchmark::DoNotOptimize(treeLoad(tree(), foliation, species, kSeaside, Exposure::scattered,
                                          {.gust_m_s = 30.0}));
    perStationBearing(state);
}
BENCHMARK(wholeTree)->Unit(benchmark::kMicrosecond);

void breakingGustsOfTheTree(benchmark::State& state)
{
    const auto species = redMaple();
    const auto foliation = foliate(tree(), species);
    for (auto _ : state)
        benchmark::DoNotOptimize(
            breakingGusts(tree(), foliation, species, kSeaside, Exposure::scattered, {}));
}
BENCHMARK(breakingGustsOfTheTree)->Unit(benchmark::kMicrosecond);

void loadsWithoutTheSearch(benchmark::State& state)
{
    const auto species = redMaple();
    const auto foliation = foliate(tree(), species);
    for (auto _ : state)
        benchmark::DoNotOptimize(loadCase(tree(), foliation, species, kSeaside, Exposure::scattered,
                                          {.gust_m_s = 30.0}));
    perStationBearing(state);
}
BENCHMARK(loadsWithoutTheSearch)->Unit(benchmark::kMicrosecond);

void silhouettes(benchmark::State& state)
{
    const auto order = limbOrder(tree());
    const auto bodies = leafyBodies(tree());
    for (auto _ : state) {
        Silhouettes seen(tree(), order, bodies);
        for (int i = 0; i < 18; ++i)
            seen.lookAlong(10.0 * i);
        benchmark::DoNotOptimize(seen.visible(0, 0));
    }
    perStationBearing(state);
}
BENCHMARK(silhouettes)->Unit(benchmark::kMicrosecond);

/// The least that such a reckoning could do: for each station and bearing, four multiply-adds to
/// sum forces and nine to turn them into a moment.
void bareMultiplyAdds(benchmark::State& state)
{
    std::vector<double> forces(static_cast<std::size_t>(kLimbs * kStations), 1.5);
    for (auto _ : state) {
        double sum = 0.0;
        for (int bearing = 0; bearing < static_cast<int>(kBearings); ++bearing) {
            double f = 0.0, x = 0.0, y = 0.0, z = 0.0;
            const double dx = 0.3 + bearing;
            const double dy = 0.7 - bearing;
            for (const double force : forces) {
                f += force;
                x += force * dx;
                y += force * dy;
                z += force * 0.5;
                sum += (z - 0.1 * f) * dy + (z - 0.2 * f) * dx + ((x - f) * dy - (y - f) * dx);
            }
        }
        benchmark::DoNotOptimize(sum);
    }
    perStationBearing(state);
}
BENCHMARK(bareMultiplyAdds)->Unit(benchmark::kMicrosecond);

} // namespace
} // namespace model::load
