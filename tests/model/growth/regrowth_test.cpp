#include "model/growth/regrowth.hpp"
#include "tests/outside/outside_check.hpp"

#include "model/growth/shoot_season.hpp"
#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

namespace model::growth {
namespace {

using namespace std::chrono_literals;
using std::chrono::sys_days;

/// A tree whose leafy body, or the shoots that hang from it, end `low_m` above a path.
Garden gardenWith(double low_m, double hanging_m)
{
    Tree tree;
    tree.id = "tree";
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.3, {}}, {{0, 0, 8}, 0.1, {}}};
    Limb limb;
    limb.id = "limb";
    limb.parent = "trunk";
    limb.attachedAt_m = low_m + hanging_m + 0.5;
    const double height = low_m + hanging_m + 0.5;
    limb.stations = {{{0, 0, height}, 0.08, {}}, {{4, 0, height}, 0.03, {}}};
    limb.foliage = Foliage{1.0, 0.5, hanging_m, {}, FoliageDensity::medium, 0.0, {}};
    tree.limbs = {trunk, limb};
    Garden garden;
    garden.place = {51.5, 0.0, 50.0, "Europe/London"};
    garden.trees = {tree};
    garden.strips = {{"path", "", StripUse::path, {{2, -3}, {3, -3}, {3, 3}, {2, 3}}, 2.1, {}}};
    return garden;
}

Regrowth only(const Garden& garden, const Species& species, std::chrono::year_month_day from)
{
    const auto& tree = garden.trees.front();
    const auto all =
        regrowth(garden, tree, species, shootRate(tree, species, garden.place, 0.05), from);
    EXPECT_EQ(all.size(), 1U);
    return all.at(0);
}

// Common practice, no source: the curtain of a fast weeping tree, lifted a foot above the need in
// early summer, is down again in about a month, and three or four trims a season keep it up.
TEST(Regrowth, FastHangingShootsShutALowGapInAMonth)
{
    const auto& willow = *findSpecies(shippedTables(), "Salix babylonica");
    const auto garden = gardenWith(2.1 + 0.35, 1.5);
    const auto down = only(garden, willow, 2026y / 6 / 10);
    ASSERT_TRUE(down.middle && down.early && down.late);
    const auto days = (sys_days{*down.middle} - sys_days{2026y / 6 / 10}).count();
    EXPECT_GE(days, 21);
    EXPECT_LE(days, 45);
    const auto roomier = only(gardenWith(2.1 + 0.5, 1.5), willow, 2026y / 6 / 10);
    ASSERT_TRUE(roomier.cutsAYear);
    EXPECT_GE(*roomier.cutsAYear, 3.0);
    EXPECT_LE(*roomier.cutsAYear, 4.0);
}

// Law.
TEST(Regrowth, ComesEarlierWithFasterShootsAndLaterWithMoreRoom)
{
    const auto& birch = *findSpecies(shippedTables(), "Betula pendula");
    const auto narrow = only(gardenWith(2.3, 1.5), birch, 2026y / 5 / 1);
    const auto wide = only(gardenWith(2.5, 1.5), birch, 2026y / 5 / 1);
    EXPECT_NEAR(narrow.spare_m, 0.2, 2e-4);
    EXPECT_LT(*narrow.early, *narrow.middle);
    EXPECT_LT(*narrow.middle, *narrow.late);
    EXPECT_LT(*narrow.middle, *wide.middle);
    EXPECT_NEAR(*narrow.cutsAYear / *wide.cutsAYear, 2.0, 0.01);
}

// Closed form: a hanging curtain comes down by the year's share times the rate.
TEST(Regrowth, IsLostOnTheDayTheShootsHaveGrownTheSpare)
{
    const auto& birch = *findSpecies(shippedTables(), "Betula pendula");
    const auto garden = gardenWith(2.4, 1.5);
    const auto rate = shootRate(garden.trees[0], birch, garden.place, 0.05);
    const auto down = only(garden, birch, 2026y / 5 / 1);
    const auto clock = [&](sys_days day) {
        return growthClock(birch.practice.shootPattern, garden.place, day);
    };
    const double grown =
        rate.mean_m * (clock(sys_days{*down.middle}) - clock(sys_days{2026y / 5 / 1}));
    OUTSIDE_NEAR(grown, 0.3, rate.mean_m * 0.01); // within a day
}

TEST(Regrowth, IsSlowerForTwigsThatDoNotHang)
{
    const auto& birch = *findSpecies(shippedTables(), "Betula pendula");
    const auto hanging = only(gardenWith(2.3, 1.5), birch, 2026y / 5 / 1);
    const auto stiff = only(gardenWith(2.3, 0.0), birch, 2026y / 5 / 1);
    EXPECT_NEAR(*hanging.cutsAYear / *stiff.cutsAYear, 3.0, 1e-6);
    EXPECT_GT(*stiff.middle, *hanging.middle);
}

TEST(Regrowth, IsLostAtOnceWithoutSpare)
{
    const auto& birch = *findSpecies(shippedTables(), "Betula pendula");
    const auto down = only(gardenWith(2.0, 1.5), birch, 2026y / 5 / 1);
    EXPECT_LT(down.spare_m, 0.0);
    EXPECT_FALSE(down.cutsAYear);
    EXPECT_LE(sys_days{*down.middle} - sys_days{2026y / 5 / 1}, std::chrono::days{1});
}

TEST(Regrowth, DoesNotWaitForWoodWithoutLeaf)
{
    auto garden = gardenWith(2.3, 1.5);
    garden.trees[0].limbs[1].foliage.reset();
    const auto& birch = *findSpecies(shippedTables(), "Betula pendula");
    const auto down = only(garden, birch, 2026y / 5 / 1);
    EXPECT_FALSE(down.early);
    EXPECT_FALSE(down.cutsAYear);
}

TEST(Regrowth, SaysNothingOfAStripThatNothingOverhangs)
{
    auto garden = gardenWith(2.3, 1.5);
    garden.strips[0].outline_m = {{20, -3}, {21, -3}, {21, 3}, {20, 3}};
    const auto& tree = garden.trees[0];
    const auto& birch = *findSpecies(shippedTables(), "Betula pendula");
    EXPECT_TRUE(
        regrowth(garden, tree, birch, shootRate(tree, birch, garden.place, 0.0), 2026y / 5 / 1)
            .empty());
}

} // namespace
} // namespace model::growth
