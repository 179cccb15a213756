#include "model/crown/silhouette.hpp"
#include "model/crown/union_volume.hpp"
#include "model/load/breaking_gust.hpp"
#include "model/load/limb_load.hpp"
#include "model/load/load_case.hpp"
#include "model/load/load_study.hpp"
#include "model/sketch/reshape.hpp"
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

/// The tip of one limb goes to and fro.
std::vector<Tree> swayed(const std::string& limb)
{
    std::vector<Tree> trees;
    const auto& stations = tree().limbs[limbIndex(tree(), limb)].stations;
    for (const double shift : {0.02, -0.02, 0.04, -0.04})
        trees.push_back(sketch::bendLimb(tree(), limb, stations.size() - 1,
                                         stations.back().position_m + Vec3{shift, 0.0, shift}));
    return trees;
}

void oneLimbMoved(benchmark::State& state, const std::string& limb)
{
    const auto species = redMaple();
    const auto foliation = foliate(tree(), species);
    LoadStudy study(tree(), foliation, species, kSeaside, Exposure::scattered, {.gust_m_s = 30.0});
    const auto trees = swayed(limb);
    std::size_t next = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(study.redraw(trees[next++ % trees.size()], foliation));
}
BENCHMARK_CAPTURE(oneLimbMoved, lateral, std::string("4b"))->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(oneLimbMoved, scaffold, std::string("4"))->Unit(benchmark::kMicrosecond);

/// As the window has it: the crown's outline on plan and from the side, and with them its leaf,
/// are another with each step.
void oneLimbMovedAndOtherLeaf(benchmark::State& state)
{
    const auto species = redMaple();
    auto foliation = foliate(tree(), species);
    LoadStudy study(tree(), foliation, species, kSeaside, Exposure::scattered, {.gust_m_s = 30.0});
    const auto trees = swayed("4");
    std::size_t next = 0;
    for (auto _ : state) {
        foliation.leafPerSharingVolume_1_m *= 1.0 + 1e-6;
        benchmark::DoNotOptimize(study.redraw(trees[next++ % trees.size()], foliation));
    }
}
BENCHMARK(oneLimbMovedAndOtherLeaf)->Unit(benchmark::kMicrosecond);

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
        const Silhouettes seen(tree(), order, bodies, halfTurn_deg(10.0));
        benchmark::DoNotOptimize(seen.visible(0, 0));
    }
    perStationBearing(state);
}
BENCHMARK(silhouettes)->Unit(benchmark::kMicrosecond);

/// What a new drawing of the tree costs besides: how much leaf it bears.
void foliageOfTheTree(benchmark::State& state)
{
    const auto species = redMaple();
    for (auto _ : state)
        benchmark::DoNotOptimize(foliate(tree(), species));
}
BENCHMARK(foliageOfTheTree)->Unit(benchmark::kMicrosecond);

void volumeOfTheCrown(benchmark::State& state)
{
    const auto bodies = leafyBodies(tree());
    for (auto _ : state)
        benchmark::DoNotOptimize(unionVolume_m3(bodies, 0.075));
}
BENCHMARK(volumeOfTheCrown)->Unit(benchmark::kMicrosecond);

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
