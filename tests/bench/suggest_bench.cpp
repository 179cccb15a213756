// How long a whole suggestion takes on plausible trees: headroom over two strips, relief and light
// at once. Counters: median and 95th percentile of processor time a tree, how many were proven.
#include "model/advice/suggestion.hpp"
#include "model/light/daylight.hpp"
#include "model/sketch/first_tree.hpp"
#include "tests/model/species/table_files.hpp"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <array>
#include <ctime>
#include <random>

namespace model::advice {
namespace {

using namespace std::chrono_literals;

constexpr auto kDate = 2026y / 2 / 1;
constexpr std::size_t kTrees = 50;

double pick(std::mt19937& random, double low, double high)
{
    return std::uniform_real_distribution<double>(low, high)(random);
}

/// A tree over a path and a drive, a bed to the north of it.
Garden gardenWith(Tree tree)
{
    tree.id = "tree";
    Garden garden;
    garden.place = {51.5, 0.0, 50.0, "Europe/London", {}};
    garden.designGust_m_s = 30.0;
    garden.trees = {std::move(tree)};
    garden.strips.resize(2);
    garden.strips[0].id = "path";
    garden.strips[0].outline_m = {{-9, 1.5}, {9, 1.5}, {9, 2.7}, {-9, 2.7}};
    garden.strips[1].id = "drive";
    garden.strips[1].use = StripUse::drive;
    garden.strips[1].outline_m = {{2, -9}, {4.5, -9}, {4.5, 9}, {2, 9}};
    garden.plantings.resize(1);
    garden.plantings[0].id = "bed";
    garden.plantings[0].plant = "Solanum lycopersicum";
    garden.plantings[0].outline_m = {{-2, 3}, {2, 3}, {2, 6}, {-2, 6}};
    return garden;
}

/// The next plausible tree with about so many limbs.
Tree drawn(std::mt19937& random, std::size_t limbs)
{
    constexpr std::array kSpecies{"Acer saccharinum", "Acer rubrum", "Quercus robur",
                                  "Tilia cordata"};
    constexpr std::array kHabits{sketch::Habit::spreading, sketch::Habit::vase,
                                 sketch::Habit::conical};
    for (;;) {
        sketch::FirstMeasures measures;
        measures.stemDiameter_m = pick(random, 0.2, 0.6);
        measures.height_m = measures.stemDiameter_m * pick(random, 22.0, 32.0);
        measures.spread_m = measures.height_m * pick(random, 0.5, 0.9);
        measures.lowestLimb_m = pick(random, 1.6, 3.0);
        measures.habit = kHabits[random() % kHabits.size()];
        if (sketch::measureFault(measures))
            continue;
        auto tree = sketch::firstTree(measures);
        tree.species = kSpecies[random() % kSpecies.size()];
        if (!findSpecies(shippedTables(), tree.species))
            tree.species = "Acer rubrum";
        const double size = static_cast<double>(tree.limbs.size());
        if (size >= 0.6 * static_cast<double>(limbs) && size <= 1.5 * static_cast<double>(limbs))
            return tree;
    }
}

/// Relieved to four fifths of what its hardest pressed limb bears now, and half of the sun that it
/// keeps from the bed given back.
std::vector<Goal> goalsFor(const Garden& garden, const Foliation& foliation, const Species& species,
                           const Surroundings& around)
{
    const auto now = judge(garden, garden.trees[0], foliation, species, kDate, {},
                           {.spare_m = 0.0,
                            .goals = {{GoalKind::relief, Want::must, "", 1e-3, {}, {}},
                                      {GoalKind::light, Want::must, "bed", 24.0, {}, {}}},
                            .around = &around});
    const double used = now.goals[0].before.value_or(0.0);
    const double sun_h = 0.5 * (*now.goals[1].before + *now.goals[1].atBest);
    return {{GoalKind::relief, Want::must, "", 0.8 * used, {}, {}},
            {GoalKind::light, Want::must, "bed", sun_h, {}, {}}};
}

void suggestion(benchmark::State& state)
{
    const auto limbs = static_cast<std::size_t>(state.range(0));
    for ([[maybe_unused]] auto _ : state) {
        std::mt19937 random(7);
        std::vector<double> seconds;
        double proven = 0.0;
        double met = 0.0;
        double size = 0.0;
        for (std::size_t i = 0; i < kTrees; ++i) {
            const Garden garden = gardenWith(drawn(random, limbs));
            const auto& tree = garden.trees[0];
            const auto& species = *findSpecies(shippedTables(), tree.species);
            const auto all = light::foliations(garden, shippedTables());
            const Surroundings around{shippedTables(), all};
            const Aim aim{.spare_m = 0.0,
                          .goals = goalsFor(garden, all[0], species, around),
                          .around = &around};
            const auto started = std::clock();
            const auto found = suggest(garden, tree, all[0], species, kDate, aim);
            seconds.push_back(static_cast<double>(std::clock() - started) / CLOCKS_PER_SEC);
            proven += found.proven ? 1.0 : 0.0;
            met += found.outcome == Outcome::met ? 1.0 : 0.0;
            size += static_cast<double>(tree.limbs.size());
        }
        std::ranges::sort(seconds);
        state.counters["limbs"] = size / kTrees;
        state.counters["median_s"] = seconds[kTrees / 2];
        state.counters["p95_s"] = seconds[kTrees * 95 / 100];
        state.counters["proven"] = proven;
        state.counters["met"] = met;
    }
}
BENCHMARK(suggestion)->Arg(40)->Iterations(1)->Unit(benchmark::kSecond);

} // namespace
} // namespace model::advice
