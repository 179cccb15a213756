#include "model/diary/season_leaf.hpp"
#include "tests/outside/outside_check.hpp"

#include "model/diary/storm_season.hpp"
#include "model/diary/window.hpp"
#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

namespace model::diary {
namespace {

using namespace std::chrono_literals;
using std::chrono::days;
using std::chrono::sys_days;

const Place kEngland{51.5, 0.0, 0.0, "Europe/London"};
const Place kTasmania{-43.1, 147.0, 85.0, "Australia/Hobart"};

Visit visitOn(std::chrono::year_month_day date, std::optional<double> share)
{
    Visit visit;
    visit.date = date;
    visit.leafShare = share;
    visit.cuts.push_back({CutKind::thinning, "limb", 0.0, {}, 0.2, {}});
    return visit;
}

Species plainSpecies()
{
    return {};
}

// Worked by hand: half of the leaves are down on day 316 of the year at 51.5 N by the sea
// (light.md, L14): 11 November 2024, 12 November 2025.
TEST(GrowingYear, RunsFromLeafFallToLeafFall)
{
    const auto year = growingYear({}, kEngland, 2025y / 7 / 1);
    EXPECT_EQ(year.year, 2025);
    EXPECT_EQ(year.from, 2024y / 11 / 12);
    EXPECT_EQ(year.to, 2025y / 11 / 12);
    EXPECT_EQ(growingYear({}, kEngland, 2024y / 12 / 20).year, 2025);
    EXPECT_EQ(growingYear({}, kEngland, 2024y / 11 / 1).year, 2024);
}

// Worked by hand: leaves that the gardener sees down on 20 May, in the south.
TEST(GrowingYear, FollowsTheGardenersOwnLeafFallInTheSouth)
{
    LeafDates seen;
    seen.on = std::chrono::October / 1;
    seen.off = std::chrono::May / 20;
    const auto year = growingYear(seen, kTasmania, 2023y / 1 / 15);
    EXPECT_EQ(year.year, 2022); // the summer of 2022-23
    EXPECT_EQ(year.from, 2022y / 5 / 21);
    EXPECT_EQ(year.to, 2023y / 5 / 20);
}

// Law: growing years follow each other without a gap, and each is about a year long.
TEST(GrowingYear, LeavesNoDayOut)
{
    for (const auto& place : {kEngland, kTasmania, Place{1.3, 103.8, 10.0, ""}}) {
        auto year = growingYear({}, place, 2020y / 3 / 1);
        for (int i = 0; i < 8; ++i) {
            const auto next =
                growingYear({}, place, std::chrono::year_month_day{sys_days{year.to} + days{1}});
            EXPECT_EQ(sys_days{next.from}, sys_days{year.to} + days{1});
            EXPECT_EQ(next.year, year.year + 1);
            const auto length = (sys_days{year.to} - sys_days{year.from}).count() + 1;
            EXPECT_GE(length, 364);
            EXPECT_LE(length, 367);
            year = next;
        }
    }
}

// Published: ANSI A300-1995, Pruning, 5.3.1: not more than a quarter of the foliage within a
// growing season. What is cut in the winter before a summer and in that summer is of one season.
TEST(LeafBySeason, AddsAWinterToTheSummerAfterIt)
{
    Tree tree;
    tree.visits = {visitOn(2025y / 1 / 20, 0.12), visitOn(2025y / 7 / 10, 0.08),
                   visitOn(2025y / 12 / 1, 0.20)};
    const auto seasons = leafBySeason(tree, plainSpecies(), kEngland, 2025y / 12 / 24);
    ASSERT_EQ(seasons.size(), 2U);
    OUTSIDE_NEAR(seasons[0].taken, 0.20, 1e-12);
    OUTSIDE_NEAR(seasons[0].left(), 0.05, 1e-12);
    OUTSIDE_NEAR(seasons[1].taken, 0.20, 1e-12);
    EXPECT_DOUBLE_EQ(seasons[1].guideline, 0.25);
}

TEST(LeafBySeason, CountsVisitsThatDidNotSayHowMuchAndLeavesOutLaterOnes)
{
    Tree tree;
    tree.vigour = Vigour::old;
    tree.visits = {visitOn(2025y / 7 / 10, {}), visitOn(2025y / 8 / 10, 0.15),
                   visitOn(2025y / 9 / 10, 0.05)};
    const auto seasons = leafBySeason(tree, plainSpecies(), kEngland, 2025y / 8 / 20);
    ASSERT_EQ(seasons.size(), 1U);
    EXPECT_EQ(seasons[0].unknown, 1);
    EXPECT_NEAR(seasons[0].taken, 0.15, 1e-12);
    EXPECT_DOUBLE_EQ(seasons[0].guideline, 0.10);
    EXPECT_EQ(seasons[0].left(), 0.0);
}

TEST(LeafBySeason, ShowsTheSeasonOfTheDayForATreeWithoutVisits)
{
    const auto seasons = leafBySeason(Tree{}, plainSpecies(), kEngland, 2025y / 8 / 20);
    ASSERT_EQ(seasons.size(), 1U);
    EXPECT_EQ(seasons[0].season.year, 2025);
}

// Law: the sum over seasons is the sum over visits.
TEST(LeafBySeason, LosesNothing)
{
    Tree tree;
    double sum = 0.0;
    for (int i = 0; i < 40; ++i) {
        const double share = 0.001 * (i % 7);
        tree.visits.push_back(
            visitOn(std::chrono::year_month_day{sys_days{2011y / 2 / 3} + days{i * 131}}, share));
        sum += share;
    }
    double counted = 0.0;
    for (const auto& season : leafBySeason(tree, plainSpecies(), kTasmania, 2026y / 1 / 1))
        counted += season.taken;
    EXPECT_NEAR(counted, sum, 1e-12);
}

// Worked by hand from trees/practice.csv: apple, good in January to March and July and August in
// the north, half a year later in the south.
TEST(GoodWindow, IsTheNextRunOfGoodMonthsInBothHemispheres)
{
    const auto& apple = *findSpecies(shippedTables(), "Malus domestica");
    const auto north = goodWindow(apple, 51.0, 2025y / 5 / 3);
    ASSERT_TRUE(north);
    EXPECT_EQ(north->from, 2025y / 7 / 1);
    EXPECT_EQ(north->to, 2025y / 8 / 31);
    const auto winter = goodWindow(apple, 51.0, 2025y / 11 / 25);
    EXPECT_EQ(winter->from, 2026y / 1 / 1);
    EXPECT_EQ(winter->to, 2026y / 3 / 31);
    const auto south = goodWindow(apple, -43.0, 2025y / 8 / 9);
    EXPECT_EQ(south->from, 2025y / 7 / 1);
    EXPECT_EQ(south->to, 2025y / 9 / 30);
    EXPECT_EQ(goodWindow(apple, -43.0, 2025y / 11 / 25)->from, 2026y / 1 / 1);
}

// Worked by hand: silver maple's winter window runs over the turn of the year.
TEST(GoodWindow, RunsOverTheTurnOfTheYear)
{
    const auto& maple = *findSpecies(shippedTables(), "Acer saccharinum");
    const auto window = goodWindow(maple, 43.4, 2026y / 1 / 10);
    EXPECT_EQ(window->from, 2025y / 11 / 1);
    EXPECT_EQ(window->to, 2026y / 1 / 31);
    EXPECT_FALSE(goodWindow(plainSpecies(), 43.4, 2026y / 1 / 10));
}

// Published: the Atlantic hurricane season, 1 June to 30 November (NOAA National Hurricane Center),
// and the Australian tropical cyclone season, 1 November to 30 April (Bureau of Meteorology); both
// seen as quoted by others.
TEST(StormSeason, IsThatOfTheHurricanesAndCyclonesInTheWarmBelts)
{
    const auto miami = stormSeason({25.8, -80.2, 2.0, ""}, 2026y / 2 / 1);
    ASSERT_TRUE(miami);
    EXPECT_EQ(miami->from, 2026y / 6 / 1);
    EXPECT_EQ(miami->to, 2026y / 11 / 30);
    const auto townsville = stormSeason({-19.3, 146.8, 10.0, ""}, 2026y / 2 / 1);
    EXPECT_EQ(townsville->from, 2025y / 11 / 1);
    EXPECT_EQ(townsville->to, 2026y / 4 / 30);
}

// From memory: the windstorms of Europe are counted from October to March.
TEST(StormSeason, IsTheWinterHalfInTheWesterlies)
{
    const auto london = stormSeason(kEngland, 2026y / 8 / 1);
    EXPECT_EQ(london->from, 2026y / 10 / 1);
    EXPECT_EQ(london->to, 2027y / 3 / 31);
    EXPECT_EQ(stormSeason(kTasmania, 2026y / 8 / 1)->from, 2026y / 4 / 1);
}

TEST(StormSeason, IsTheGardenersOwnWhereHeSaidSo)
{
    Place plains{38.0, -97.0, 400.0, ""};
    plains.stormMonths = {5, 4, 6};
    const auto spring = stormSeason(plains, 2026y / 7 / 1);
    EXPECT_EQ(spring->from, 2027y / 4 / 1);
    EXPECT_EQ(spring->to, 2027y / 6 / 30);
    plains.stormMonths = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12};
    EXPECT_FALSE(stormSeason(plains, 2026y / 7 / 1));
}

} // namespace
} // namespace model::diary
