// The due list of a whole garden: 30 plausible trees over paths, each with 20 years of 4 visits.
// `dueList` is all that the window and `underbough due` work out, the search for the least cuts of
// each tree included; `diaries` leaves that search out: what the visits alone add up to.
#include "model/diary/garden_diary.hpp"
#include "model/document/validate.hpp"
#include "model/light/daylight.hpp"
#include "model/sketch/first_tree.hpp"
#include "tests/model/species/table_files.hpp"

#include <benchmark/benchmark.h>

#include <array>

namespace model::diary {
namespace {

using namespace std::chrono_literals;

constexpr auto kDate = 2026y / 7 / 14;
constexpr int kTrees = 30;
constexpr int kYears = 20;

Tree drawn(int number)
{
    constexpr std::array kSpecies{"Malus domestica", "Acer rubrum", "Tilia cordata"};
    sketch::FirstMeasures measures;
    measures.height_m = 6.0 + 0.1 * number;
    measures.stemDiameter_m = measures.height_m / 27.0;
    measures.spread_m = 0.7 * measures.height_m;
    measures.lowestLimb_m = 1.7;
    measures.habit = number % 2 == 0 ? sketch::Habit::spreading : sketch::Habit::vase;
    auto tree = sketch::firstTree(measures);
    tree.id = "tree " + std::to_string(number);
    tree.species = kSpecies[static_cast<std::size_t>(number) % kSpecies.size()];
    tree.position_m = {12.0 * (number % 6), 12.0 * (number / 6)};
    return tree;
}

Visit visit(const Tree& tree, int number)
{
    Visit visit;
    visit.id = "visit " + std::to_string(number);
    visit.date = std::chrono::year(2006 + number / 4) / (1 + 3 * (number % 4)) / 12;
    const auto& limb = tree.limbs[1 + static_cast<std::size_t>(number) % (tree.limbs.size() - 1)];
    if (number % 4 == 2)
        visit.cuts.push_back({CutKind::thinning, limb.id, 0.0, {}, 0.1, {}});
    visit.leafShare = 0.03;
    visit.headroom.push_back({"path " + tree.id, 2.3 + 0.01 * (number % 4), 2.5, {}});
    visit.wounds.push_back({tree.limbs[0].id, 1.0 + 0.01 * number, 0.04, {}, {}});
    return visit;
}

const Garden& garden()
{
    static const Garden kGarden = [] {
        Garden made;
        made.place = {51.5, 0.0, 50.0, "Europe/London", {}};
        made.designGust_m_s = 25.0;
        for (int i = 0; i < kTrees; ++i) {
            auto tree = drawn(i);
            for (int v = 0; v < 4 * kYears; ++v)
                tree.visits.push_back(visit(tree, v));
            const auto at = tree.position_m;
            Strip path;
            path.id = "path " + tree.id;
            path.outline_m = {{at.x - 5, at.y + 1},
                              {at.x + 5, at.y + 1},
                              {at.x + 5, at.y + 2.2},
                              {at.x - 5, at.y + 2.2}};
            made.strips.push_back(std::move(path));
            made.trees.push_back(std::move(tree));
        }
        return made;
    }();
    return kGarden;
}

void dueListOfTheGarden(benchmark::State& state)
{
    if (const auto faults = validate(garden()); !faults.empty())
        return state.SkipWithError(oneLine(faults.front()).c_str());
    std::size_t dues = 0;
    for (auto _ : state)
        dues = dueList(gardenDiary(garden(), shippedTables(), kDate)).size();
    state.counters["due"] = static_cast<double>(dues);
    state.counters["limbs"] = static_cast<double>(garden().trees[0].limbs.size());
}
BENCHMARK(dueListOfTheGarden)->Unit(benchmark::kMillisecond)->Iterations(1)->Repetitions(5);

void diariesAlone(benchmark::State& state)
{
    const auto foliations = light::foliations(garden(), shippedTables());
    for (auto _ : state)
        for (std::size_t i = 0; i < garden().trees.size(); ++i) {
            const auto& tree = garden().trees[i];
            benchmark::DoNotOptimize(treeDiary(garden(), tree, foliations[i],
                                               *findSpecies(shippedTables(), tree.species), {},
                                               kDate));
        }
}
BENCHMARK(diariesAlone)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace model::diary
