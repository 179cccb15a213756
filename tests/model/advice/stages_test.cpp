#include "model/advice/stages.hpp"

#include "model/advice/prune.hpp"
#include "model/light/daylight.hpp"
#include "tests/model/advice/limb_from.hpp"
#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model::advice {
namespace {

using namespace std::chrono_literals;

constexpr auto kDate = 2026y / 2 / 1;

/// A stem with `limbs` level limbs all round at 2 m, under which somebody wants to walk upright.
Garden levelLimbs(int limbs)
{
    Tree tree;
    tree.id = "tree";
    tree.species = "Malus domestica";
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.35, {}}, {{0, 0, 8}, 0.12, {}}};
    trunk.foliage = Foliage{5.2, 2.0, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    tree.limbs.push_back(trunk);
    for (int i = 0; i < limbs; ++i) {
        const double turn = 2.0 * std::numbers::pi * i / limbs;
        tree.limbs.push_back(limbFrom("limb" + std::to_string(i), trunk, 2.0,
                                      {2.5 * std::cos(turn), 2.5 * std::sin(turn), 0.2}, 0.06));
        tree.limbs.back().foliage = Foliage{0.8, 0.5, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    }
    Garden garden;
    garden.place = {51.5, 0.0, 50.0, "Europe/London"};
    garden.designGust_m_s = 28.0;
    garden.trees = {tree};
    garden.strips = {{"round", "", StripUse::path, {{-4, -4}, {4, -4}, {4, 4}, {-4, 4}}, 2.2, {}}};
    return garden;
}

struct Asked {
    explicit Asked(Garden g, std::chrono::year_month_day on = kDate)
        : garden(std::move(g)), species(*findSpecies(shippedTables(), garden.trees[0].species)),
          foliation(foliate(garden.trees[0], species)),
          first(suggest(garden, garden.trees[0], foliation, species, on)),
          all(stages(garden, garden.trees[0], foliation, species, first, on))
    {
    }
    Garden garden;
    const Species& species;
    Foliation foliation;
    Suggestion first;
    Stages all;
};

TEST(Stages, AreNoneWhereOneVisitDoes)
{
    const Asked one(levelLimbs(1));
    ASSERT_EQ(one.first.outcome, Outcome::met);
    EXPECT_TRUE(one.all.visits.empty());
}

// Law: each visit keeps to what may go by then, no two come within a year, and the goals are
// reached at the end.
TEST(Stages, SpreadWhatOneVisitMayNotTake)
{
    const Asked many(levelLimbs(8));
    ASSERT_EQ(many.first.outcome, Outcome::notWithinGuideline);
    const auto& visits = many.all.visits;
    ASSERT_GE(visits.size(), 2U);
    EXPECT_TRUE(many.all.reached);
    EXPECT_NE(visits.back().suggestion.outcome, Outcome::notWithinGuideline);
    for (std::size_t i = 0; i < visits.size(); ++i) {
        EXPECT_LE(visits[i].suggestion.leafShare, visits[i].suggestion.allowance + 1e-9);
        if (i > 0) {
            EXPECT_GE(visits[i].date, visits[i - 1].date + std::chrono::years{1});
        }
    }
}

// Law: no plan takes fewer visits than the leaf that has to go fills allowances.
TEST(Stages, SayOnlyThatTheyAreFewestWhenTheLeafSaysSo)
{
    for (const int limbs : {5, 6, 8, 10}) {
        const Asked asked(levelLimbs(limbs));
        if (!asked.all.fewest)
            continue;
        const double perVisit = asked.first.allowance;
        EXPECT_GT(asked.first.leafBoundWithoutGuideline.value(),
                  perVisit * static_cast<double>(asked.all.visits.size() - 1))
            << limbs;
    }
}

// By hand, from trees/practice.csv: apples are best cut in the months listed there.
TEST(Stages, ComeInAGoodMonthOfEitherHemisphere)
{
    const auto& apple = *findSpecies(shippedTables(), "Malus domestica");
    const auto isGood = [&](int month) {
        return std::ranges::find(apple.practice.bestMonthsNorth, month) !=
               apple.practice.bestMonthsNorth.end();
    };
    for (unsigned month = 1; month <= 12; ++month) {
        const auto from = 2026y / std::chrono::month{month} / 17;
        const auto north = nextVisit(apple, 50.0, from);
        const auto south = nextVisit(apple, -40.0, from);
        EXPECT_GE(north, from + std::chrono::years{1});
        EXPECT_LT(north, from + std::chrono::years{2});
        EXPECT_TRUE(isGood(static_cast<int>(unsigned(north.month())))) << month;
        EXPECT_TRUE(isGood((static_cast<int>(unsigned(south.month())) + 5) % 12 + 1)) << month;
    }
}

} // namespace
} // namespace model::advice
