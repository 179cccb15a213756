// How long a whole suggestion takes on plausible trees: headroom over two strips, relief and light
// at once, each asked for as far as cuts inside the guideline can bring it. Counters: median and
// 95th percentile of processor time a tree (what 95 in a hundred stay within), and the longest; how
// many were met and proven; how many take at most 2 % more leaf than the bound; the largest gap
// between the leaf taken and the bound, where not proven.
#include "model/advice/suggestion.hpp"
#include "model/light/daylight.hpp"
#include "tests/bench/plausible_garden.hpp"
#include "tests/model/advice/integer_program.hpp"
#include "tests/model/species/table_files.hpp"

#include <benchmark/benchmark.h>

#include <sys/resource.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <numeric>

namespace model::advice {
namespace {

using namespace std::chrono_literals;

constexpr auto kDate = 2026y / 2 / 1;

void suggestion(benchmark::State& state)
{
    const auto pieces = static_cast<std::size_t>(state.range(0));
    const auto count = static_cast<std::size_t>(state.range(1));
    for ([[maybe_unused]] auto _ : state) {
        std::mt19937 random(7);
        std::vector<double> seconds;
        double proven = 0.0;
        double met = 0.0;
        double limbs = 0.0;
        double gap = 0.0;
        double close = 0.0; // of those that were met
        for (std::size_t i = 0; i < count; ++i) {
            Garden garden = plausibleGarden(random, pieces);
            const auto& species = *findSpecies(shippedTables(), garden.trees[0].species);
            const auto all = light::foliations(garden, shippedTables());
            const Surroundings around{shippedTables(), all};
            const Aim aim{.spare_m = 0.0,
                          .goals = reachableGoals(random, garden, all[0], species, around, kDate),
                          .around = &around};
            const auto started = std::clock();
            const auto found = suggest(garden, garden.trees[0], all[0], species, kDate, aim);
            seconds.push_back(static_cast<double>(std::clock() - started) / CLOCKS_PER_SEC);
            proven += found.proven ? 1.0 : 0.0;
            met += found.outcome == Outcome::met ? 1.0 : 0.0;
            limbs += static_cast<double>(garden.trees[0].limbs.size());
            if (found.outcome == Outcome::met && found.leafShare > 0.0) {
                const double apart = 1.0 - found.leafBound / found.leafShare;
                gap = std::max(gap, apart);
                close += apart <= 0.02 ? 1.0 : 0.0;
            }
            if (std::getenv("UNDERBOUGH_BENCH_EACH"))
                std::printf("%2zu limbs %3zu outcome %d proven %d leaf %.4f bound %.4f cuts %zu "
                            "nodes %ld goals %zu %.3f s\n",
                            i, garden.trees[0].limbs.size(), static_cast<int>(found.outcome),
                            found.proven, found.leafShare, found.leafBound, found.cuts.size(),
                            found.nodes, aim.goals.size(), seconds.back());
        }
        std::ranges::sort(seconds);
        state.counters["limbs"] = limbs / static_cast<double>(count);
        state.counters["median_s"] = seconds[count / 2];
        state.counters["p95_s"] = seconds[(count * 95 + 99) / 100 - 1];
        state.counters["longest_s"] = seconds.back();
        state.counters["proven"] = proven;
        state.counters["met"] = met;
        state.counters["gap"] = gap;
        state.counters["within2pc"] = close;
    }
}
BENCHMARK(suggestion)
    ->ArgNames({"pieces", "trees"})
    ->Args({10, 50})
    ->Args({20, 50})
    ->Args({40, 50})
    ->Args({60, 50})
    ->Args({100, 20})
    ->Iterations(1)
    ->Unit(benchmark::kSecond);

double childSeconds()
{
    rusage used{};
    getrusage(RUSAGE_CHILDREN, &used);
    const auto seconds = [](timeval t) {
        return static_cast<double>(t.tv_sec) + 1e-6 * static_cast<double>(t.tv_usec);
    };
    return seconds(used.ru_utime) + seconds(used.ru_stime);
}

/// What starting the solver takes.
double startSeconds()
{
    constexpr int kTimes = 10;
    const double before = childSeconds();
    for (int i = 0; i < kTimes; ++i)
        if (std::system("glpsol --version > /dev/null 2>&1") != 0)
            return 0.0;
    return (childSeconds() - before) / kTimes;
}

/// Headroom, relief and light as far as they add up, nothing measured: ours against GLPK, which is
/// started anew each time (taken off) and reads a file (left in).
void additivePart(benchmark::State& state)
{
    const auto pieces = static_cast<std::size_t>(state.range(0));
    constexpr std::size_t kTrees = 20;
    for ([[maybe_unused]] auto _ : state) {
        std::mt19937 random(7);
        std::vector<double> ours;
        std::vector<double> theirs;
        double same = 0.0;
        const double start = startSeconds();
        for (std::size_t i = 0; i < kTrees; ++i) {
            Garden garden = plausibleGarden(random, pieces);
            const auto& species = *findSpecies(shippedTables(), garden.trees[0].species);
            const auto all = light::foliations(garden, shippedTables());
            const Surroundings around{shippedTables(), all};
            const auto goals = reachableGoals(random, garden, all[0], species, around, kDate);
            const Targets targets({garden, garden.trees[0], all[0], species, kDate, &around},
                                  goals);
            auto decisions = options(garden.trees[0], all[0], targets.wanted());
            decisions.leafMost = 0.25;
            decisions.woundMost_m2 = 0.1;
            const auto started = std::clock();
            const auto found = leastLeaf(decisions);
            ours.push_back(static_cast<double>(std::clock() - started) / CLOCKS_PER_SEC);
            const double before = childSeconds();
            const auto least = solved(decisions);
            theirs.push_back(std::max(0.0, childSeconds() - before - start));
            same +=
                found.found == least.has_value() && (!least || std::abs(found.leaf - *least) < 1e-6)
                    ? 1.0
                    : 0.0;
        }
        const double mine = std::accumulate(ours.begin(), ours.end(), 0.0) / kTrees;
        const double others = std::accumulate(theirs.begin(), theirs.end(), 0.0) / kTrees;
        state.counters["ours_s"] = mine;
        state.counters["glpk_s"] = others;
        state.counters["ratio"] = mine / others;
        state.counters["same"] = same;
    }
}
BENCHMARK(additivePart)
    ->ArgName("pieces")
    ->Arg(20)
    ->Arg(40)
    ->Arg(100)
    ->Iterations(1)
    ->Unit(benchmark::kSecond);

} // namespace
} // namespace model::advice
