#include "model/crown/foliage_study.hpp"
#include "model/crown/silhouette.hpp"
#include "model/crown/union_volume.hpp"
#include "model/load/limb_load.hpp"
#include "model/load/load_case.hpp"
#include "model/load/load_study.hpp"
#include "model/load/relief.hpp"
#include "model/sketch/reshape.hpp"
#include "tests/bench/sixty_limbs.hpp"

#include <benchmark/benchmark.h>

#include <ctime>

namespace model::load {
namespace {

constexpr double kBearings = 36.0;

const Tree& tree()
{
    static const Tree made = sixtyLimbs();
    return made;
}

/// The least that such a reckoning could do: for each station and bearing, four multiply-adds to
/// sum forces and nine to turn them into a moment.
double bareSums()
{
    static const std::vector<double> forces(static_cast<std::size_t>(kLimbs * kStations), 1.5);
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
    return sum;
}

double cpu_s()
{
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

/// Tells a benchmark's time for each station and bearing, the unit in which a load assessment is
/// spoken of, and as so many times the bare sums, timed in the same run just before.
class PerStationBearing {
public:
    explicit PerStationBearing(benchmark::State& state) : state_(state)
    {
        constexpr int kTimes = 400;
        const double started = cpu_s();
        for (int i = 0; i < kTimes; ++i)
            benchmark::DoNotOptimize(bareSums());
        started_ = cpu_s();
        bare_s_ = (started_ - started) / kTimes;
    }
    ~PerStationBearing()
    {
        const double each_s = (cpu_s() - started_) / static_cast<double>(state_.iterations());
        state_.counters["ns/station-bearing"] = 1e9 * each_s / (kLimbs * kStations * kBearings);
        state_.counters["times bare sums"] = each_s / bare_s_;
    }
    PerStationBearing(const PerStationBearing&) = delete;
    PerStationBearing& operator=(const PerStationBearing&) = delete;

private:
    benchmark::State& state_;
    double started_{};
    double bare_s_{};
};

void wholeTree(benchmark::State& state)
{
    const auto species = redMaple();
    const auto foliation = foliate(tree(), species);
    const PerStationBearing told(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(treeLoad(tree(), foliation, species, kSeaside, Exposure::scattered,
                                          {.gust_m_s = 30.0}));
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
    const PerStationBearing told(state);
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
    const PerStationBearing told(state);
    for (auto _ : state) {
        foliation.leafPerSharingVolume_1_m *= 1.0 + 1e-6;
        benchmark::DoNotOptimize(study.redraw(trees[next++ % trees.size()], foliation));
    }
}
BENCHMARK(oneLimbMovedAndOtherLeaf)->Unit(benchmark::kMicrosecond);

/// What every thinning buys on every limb that it relieves, with the loads at hand.
void reliefByThinning(benchmark::State& state)
{
    const auto species = redMaple();
    const auto foliation = foliate(tree(), species);
    const Conditions windy{.gust_m_s = kReferenceGust_m_s};
    const LoadStudy study(tree(), foliation, species, kSeaside, Exposure::scattered, windy);
    const PerStationBearing told(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(
            thinningReliefs(tree(), foliation, species, windy, study, nullptr, nullptr));
}
BENCHMARK(reliefByThinning)->Unit(benchmark::kMicrosecond);

void reliefByThinningWithGusts(benchmark::State& state)
{
    const auto species = redMaple();
    const auto foliation = foliate(tree(), species);
    const Conditions windy{.gust_m_s = kReferenceGust_m_s};
    const LoadStudy study(tree(), foliation, species, kSeaside, Exposure::scattered, windy);
    const BreakingLimbs breaking(tree(), study.loadCase(), species, Exposure::scattered);
    const PerStationBearing told(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(thinningReliefs(tree(), foliation, species, windy, study,
                                                 &study.loadCase(), &breaking));
}
BENCHMARK(reliefByThinningWithGusts)->Unit(benchmark::kMicrosecond);

/// What every removal buys, each assessed whole.
void reliefByRemoval(benchmark::State& state, bool withGusts)
{
    const auto species = redMaple();
    const auto foliation = foliate(tree(), species);
    const PerStationBearing told(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(removalReliefs(tree(), foliation, species, kSeaside,
                                                Exposure::scattered, {.gust_m_s = 30.0},
                                                withGusts));
}
BENCHMARK_CAPTURE(reliefByRemoval, loads, false)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(reliefByRemoval, withGusts, true)->Unit(benchmark::kMicrosecond);

void breakingGustsOfTheTree(benchmark::State& state)
{
    const auto species = redMaple();
    const auto foliation = foliate(tree(), species);
    const PerStationBearing told(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(
            breakingGusts(tree(), foliation, species, kSeaside, Exposure::scattered, {}));
}
BENCHMARK(breakingGustsOfTheTree)->Unit(benchmark::kMicrosecond);

void loadsWithoutTheSearch(benchmark::State& state)
{
    const auto species = redMaple();
    const auto foliation = foliate(tree(), species);
    const PerStationBearing told(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(loadCase(tree(), foliation, species, kSeaside, Exposure::scattered,
                                          {.gust_m_s = 30.0}));
}
BENCHMARK(loadsWithoutTheSearch)->Unit(benchmark::kMicrosecond);

void silhouettes(benchmark::State& state)
{
    const auto order = limbOrder(tree());
    const auto bodies = leafyBodies(tree());
    const PerStationBearing told(state);
    for (auto _ : state) {
        const Silhouettes seen(tree(), order, bodies, halfTurn_deg(10.0));
        benchmark::DoNotOptimize(seen.visible(0, 0));
    }
}
BENCHMARK(silhouettes)->Unit(benchmark::kMicrosecond);

/// What a new drawing of the tree costs besides: how much leaf it bears.
void foliageOfTheTree(benchmark::State& state)
{
    const auto species = redMaple();
    const PerStationBearing told(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(foliate(tree(), species));
}
BENCHMARK(foliageOfTheTree)->Unit(benchmark::kMicrosecond);

/// The same for a drawing of which one scaffold with its laterals moved.
void foliageAfterADrag(benchmark::State& state)
{
    FoliageStudy study(redMaple());
    (void)study.redraw(tree());
    const auto trees = swayed("4");
    (void)study.redraw(trees.back());
    std::size_t next = 0;
    const PerStationBearing told(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(study.redraw(trees[next++ % trees.size()]));
}
BENCHMARK(foliageAfterADrag)->Unit(benchmark::kMicrosecond);

void volumeOfTheCrown(benchmark::State& state)
{
    const auto bodies = leafyBodies(tree());
    const PerStationBearing told(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(unionVolume_m3(bodies, 0.075));
}
BENCHMARK(volumeOfTheCrown)->Unit(benchmark::kMicrosecond);

void bareMultiplyAdds(benchmark::State& state)
{
    const PerStationBearing told(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(bareSums());
}
BENCHMARK(bareMultiplyAdds)->Unit(benchmark::kMicrosecond);

} // namespace
} // namespace model::load
