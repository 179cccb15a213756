#include "model/load/limb_load.hpp"
#include "model/load/sag.hpp"
#include "tests/model/load/samples.hpp"

#include <benchmark/benchmark.h>

namespace model::load {
namespace {

/// 60 limbs: a stem, 12 scaffolds, 47 laterals on them. Laterals are drawn no more leafy than they
/// can bear, as trees are.
Tree tree(bool propped)
{
    Tree drawn = spreading(5, 12, 4);
    drawn.limbs.erase(drawn.limbs.begin() + 1); // a lateral, which carries no other
    for (auto& limb : drawn.limbs) {
        limb.fruit_kg = limb.parent ? 1.0 : 0.0;
        if (limb.foliage)
            limb.foliage->radius_m *= 0.6;
        if (propped && limb.parent == "stem")
            limb.props.push_back({0.6 * length_m(limb), {}});
    }
    return drawn;
}

/// All limbs of a tree under a load; the argument tells how many of them bear props.
void sag(benchmark::State& state, const Conditions& conditions, bool propped)
{
    const auto species = redMaple();
    const auto drawn = tree(propped);
    const auto foliation = foliate(drawn, species);
    const bool settled = sagUnder(drawn, foliation, species, conditions).settled;
    for (auto _ : state)
        benchmark::DoNotOptimize(sagUnder(drawn, foliation, species, conditions));
    state.counters["limbs"] = static_cast<double>(drawn.limbs.size());
    state.counters["settled"] = settled ? 1.0 : 0.0;
}
BENCHMARK_CAPTURE(sag, rain, Conditions{.inFruit = false, .inRain = true}, false)
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(sag, rain_and_fruit, kHeaviest, false)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(sag, rain_and_fruit_on_twelve_props, kHeaviest, true)
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(sag, ice, Conditions{.inLeaf = false, .glaze_m = 0.003}, false)
    ->Unit(benchmark::kMicrosecond);

/// For comparison: the load assessment of the same tree, without wind and with it.
void loads(benchmark::State& state, double gust_m_s, bool propped)
{
    const auto species = redMaple();
    const auto drawn = tree(propped);
    const auto foliation = foliate(drawn, species);
    for (auto _ : state)
        benchmark::DoNotOptimize(treeLoad(drawn, foliation, species, kSeaside, Exposure::scattered,
                                          {.gust_m_s = gust_m_s}));
}
BENCHMARK_CAPTURE(loads, in_gust, 30.0, false)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(loads, in_gust_on_twelve_props, 30.0, true)->Unit(benchmark::kMicrosecond);

} // namespace
} // namespace model::load
