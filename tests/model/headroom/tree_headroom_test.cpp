#include "model/headroom/headroom.hpp"
#include "tests/outside/outside_check.hpp"

#include "tests/model/headroom/shapes.hpp"

#include <gtest/gtest.h>

#include <numbers>

using namespace model;
using headroom::treeHeadroom;

namespace {

/// A stem 5 m tall at (10, 20); at 3 m one limb runs 4 m east, level, leafy in its outer half:
/// body of radius 0.5, shoots hanging 0.8 below it.
Garden oneLimbGarden()
{
    Garden garden;
    Tree tree;
    tree.id = "tree";
    tree.position_m = {10, 20};
    tree.limbs = {limbOf("trunk", {{{0, 0, 0}, 0.3}, {{0, 0, 5}, 0.2}}),
                  limbOf("east", {{{0, 0, 3}, 0.1}, {{4, 0, 3}, 0.1}})};
    auto& east = tree.limbs[1];
    east.parent = "trunk";
    east.attachedAt_m = 3.0;
    east.foliage = Foliage{};
    east.foliage->from_m = 2.0;
    east.foliage->radius_m = 0.5;
    east.foliage->hanging_m = 0.8;
    garden.trees = {tree};
    return garden;
}

headroom::StripHeadroom over(const Garden& garden, const Polygon& outline, double needed_m)
{
    Garden with = garden;
    with.strips = {{"strip", "", StripUse::path, outline, needed_m, {}}};
    return treeHeadroom(with, with.trees.front()).front();
}

} // namespace

// Closed form: 3 m - 0.5 m radius - 0.8 m shoots.
TEST(TreeHeadroom, MeasuresTheShootsOverAStripInTheGardensFrame)
{
    const auto found = over(oneLimbGarden(), box(12.5, 15, 13.5, 25), 2.4);
    OUTSIDE_NEAR(*found.height_m, 1.7, 1e-9);
    OUTSIDE_NEAR(found.shortfall_m, 0.7, 1e-9);
    ASSERT_EQ(found.blame.size(), 1U);
    EXPECT_EQ(found.blame[0].limb, "east");
    OUTSIDE_NEAR(found.blame[0].at_m.y, 20.0, 1e-3);
    EXPECT_GE(found.lowestAt_m->x, 12.5);
    EXPECT_LE(found.lowestAt_m->x, 13.5);
    // A band 1 m wide across a body 1 m wide; round outlines are drawn with corners: within 1 %.
    OUTSIDE_NEAR(*found.overhang_m2, 1.0, 0.01);
}

// Law: what is left out is the area, and nothing else changes.
TEST(TreeHeadroom, IsTheSameWithoutTheArea)
{
    auto garden = oneLimbGarden();
    garden.strips = {{"strip", "", StripUse::path, box(12.5, 15, 13.5, 25), 2.4, {}}};
    const auto& tree = garden.trees.front();
    const auto whole = treeHeadroom(garden, tree, tree).front();
    const auto quick = treeHeadroom(garden, tree, tree, headroom::Overhang::leftOut).front();
    EXPECT_EQ(quick.height_m, whole.height_m);
    EXPECT_EQ(quick.lowestAt_m, whole.lowestAt_m);
    EXPECT_EQ(quick.shortfall_m, whole.shortfall_m);
    EXPECT_EQ(quick.blame.size(), whole.blame.size());
    EXPECT_EQ(quick.sagged->height_m, whole.sagged->height_m);
    EXPECT_GT(*whole.overhang_m2, 0.0);
    EXPECT_FALSE(quick.overhang_m2);
}

TEST(TreeHeadroom, TellsShootsThatLiftingCuresFromALimbThatItDoesNot)
{
    const auto strip = box(12.5, 15, 13.5, 25);
    EXPECT_TRUE(
        over(oneLimbGarden(), strip, 2.5).blame.at(0).hangingShoots); // the body ends at 2.5
    EXPECT_FALSE(over(oneLimbGarden(), strip, 2.6).blame.at(0).hangingShoots);
}

TEST(TreeHeadroom, LiftedShootsEndAtTheirHem)
{
    auto garden = oneLimbGarden();
    garden.trees[0].limbs[1].foliage->hem_m = 2.2;
    EXPECT_NEAR(*over(garden, box(12.5, 15, 13.5, 25), 2.4).height_m, 2.2, 1e-9);
}

TEST(TreeHeadroom, CountsBareWood)
{
    const auto found = over(oneLimbGarden(), box(10.5, 15, 11, 25), 3.0);
    EXPECT_NEAR(*found.height_m, 2.95, 1e-9); // 3 m less half of 0.1 m
    ASSERT_EQ(found.blame.size(), 1U);
    EXPECT_FALSE(found.blame[0].hangingShoots);
    EXPECT_NEAR(*found.overhang_m2, 0.05, 0.001);
}

TEST(TreeHeadroom, FindsEnoughAndBlamesNobody)
{
    const auto found = over(oneLimbGarden(), box(12.5, 15, 13.5, 25), 1.7);
    EXPECT_EQ(found.shortfall_m, 0.0);
    EXPECT_TRUE(found.blame.empty());
    EXPECT_TRUE(found.height_m);
}

TEST(TreeHeadroom, LeavesAStripBlankThatNothingOverhangs)
{
    const auto found = over(oneLimbGarden(), box(0, 0, 3, 3), 2.4);
    EXPECT_FALSE(found.height_m);
    EXPECT_FALSE(found.lowestAt_m);
    EXPECT_EQ(found.shortfall_m, 0.0);
    EXPECT_EQ(*found.overhang_m2, 0.0);
}

TEST(TreeHeadroom, BlamesTheLowestLimbFirst)
{
    auto garden = oneLimbGarden();
    auto lower = garden.trees[0].limbs[1];
    lower.id = "lower";
    for (auto& station : lower.stations)
        station.position_m.z = 2.6;
    garden.trees[0].limbs.push_back(lower);
    const auto found = over(garden, box(12.5, 15, 13.5, 25), 2.4);
    ASSERT_EQ(found.blame.size(), 2U);
    EXPECT_EQ(found.blame[0].limb, "lower");
    EXPECT_NEAR(*found.height_m, 1.3, 1e-9);
    EXPECT_NEAR(*found.overhang_m2, 1.0, 0.01); // one above the other: covered once
}

// A lawn drawn round a tree: the stem is walked round, its leaf and limbs are walked under.
TEST(TreeHeadroom, LetsPeopleWalkRoundAStemThatStandsInTheStrip)
{
    auto garden = oneLimbGarden();
    EXPECT_NEAR(*over(garden, box(5, 15, 15, 25), 2.4).height_m, 1.7, 1e-9);
    garden.trees[0].limbs[1].foliage.reset();
    EXPECT_NEAR(*over(garden, box(5, 15, 15, 25), 2.4).height_m, 2.95, 1e-9);
    EXPECT_NEAR(*over(garden, box(10.1, 15, 15, 25), 2.4).height_m, 2.95, 1e-9); // on its edge
}

// Closed form: a stem that leans 1 in 1 from (0, 0), 0.2 m thick, over a strip 1 m off: its
// underside there is 1 - 0.1 * sqrt(2).
TEST(TreeHeadroom, CountsAStemThatLeansOverAStrip)
{
    Garden garden;
    Tree tree;
    tree.limbs = {limbOf("trunk", {{{0, 0, 0}, 0.2}, {{4, 0, 4}, 0.2}})};
    garden.trees = {tree};
    const auto found = over(garden, box(1, -1, 2, 1), 2.0);
    ASSERT_TRUE(found.height_m);
    OUTSIDE_NEAR(*found.height_m, 1.0 - 0.1 * std::numbers::sqrt2, 1e-6);
    EXPECT_EQ(found.blame.at(0).limb, "trunk");
}

// A round end of wood reaches into the ground; nothing is lower than the ground.
TEST(TreeHeadroom, IsNeverBelowTheGround)
{
    Garden garden;
    Tree tree;
    tree.limbs = {limbOf("trunk", {{{0, 0, 0}, 0.4}, {{0, 0, 5}, 0.4}}),
                  limbOf("sucker", {{{0.1, 0, 0}, 0.1}, {{0.6, 0, 0.05}, 0.1}})};
    tree.limbs[1].parent = "trunk";
    garden.trees = {tree};
    EXPECT_EQ(*over(garden, box(0.3, -1, 2, 1), 2.0).height_m, 0.0);
}

TEST(NeededHeadroom, IsTheGardenersOwnOrTheUsualOne)
{
    Strip strip;
    strip.use = StripUse::path;
    // Published: Miamisburg OH, Vermillion SD 90.79, Ankeny IA 166, Clive IA ask 8 ft over
    // footways.
    EXPECT_NEAR(headroom::neededHeadroom_m(strip), 8 * 0.3048, 0.05);
    strip.headroom_m = 3.1;
    EXPECT_EQ(headroom::neededHeadroom_m(strip), 3.1);
}

// Published ranges: footways 7-10 ft in US codes, roads 5.05-5.3 m in UK practice; play 84 in (US
// CPSC handbook, from memory); cars 2.4-3.0 m, common practice. ADA 2010, 307.4 (from memory): no
// place where people walk has less than 80 in.
TEST(UsualHeadroom, LiesInThePublishedRangesAndNamesItsSource)
{
    const auto of = [](StripUse use) { return headroom::usualHeadroom(use).height_m; };
    OUTSIDE_WITHIN(of(StripUse::path), 7 * 0.3048, 10 * 0.3048);
    OUTSIDE_WITHIN(of(StripUse::road), 5.05, 5.3);
    OUTSIDE_NEAR(of(StripUse::play), 84 * 0.0254, 0.05);
    OUTSIDE_WITHIN(of(StripUse::drive), 2.4, 3.0);
    for (const auto use : {StripUse::path, StripUse::mower, StripUse::rideOnMower, StripUse::drive,
                           StripUse::seat, StripUse::play, StripUse::road, StripUse::other}) {
        EXPECT_GE(of(use), 80 * 0.0254);
        EXPECT_FALSE(headroom::usualHeadroom(use).source.empty());
    }
}

// The same tree with its limb 0.3 m lower at the tip: over the strip by two thirds of that at most.
TEST(TreeHeadroom, TellsWhatIsLeftWhenTheTreeSags)
{
    auto garden = oneLimbGarden();
    garden.strips = {{"strip", "", StripUse::path, box(12.5, 15, 13.0, 25), 1.65, {}},
                     {"far", "", StripUse::path, box(30, 15, 31, 25), 2.4, {}}};
    Tree sagging = garden.trees.front();
    sagging.limbs[1].stations[1].position_m.z -= 0.3;
    const auto found = treeHeadroom(garden, garden.trees.front(), sagging);
    EXPECT_EQ(found[0].shortfall_m, 0.0);
    ASSERT_TRUE(found[0].sagged);
    EXPECT_EQ(found[0].sagged->lowestLimb, "east");
    EXPECT_LT(*found[0].sagged->height_m, *found[0].height_m - 0.15);
    EXPECT_GT(*found[0].sagged->height_m, *found[0].height_m - 0.30);
    EXPECT_NEAR(found[0].sagged->shortfall_m, 1.65 - *found[0].sagged->height_m, 1e-12);
    EXPECT_EQ(found[0].worstShortfall_m(), found[0].sagged->shortfall_m);
    EXPECT_EQ(found[0].worstHeight_m(), found[0].sagged->height_m);
    EXPECT_EQ(found[0].sagged->blame.size(), 1U);
    EXPECT_FALSE(found[1].sagged->height_m);
    EXPECT_EQ(found[1].worstShortfall_m(), 0.0);
    EXPECT_FALSE(treeHeadroom(garden, garden.trees.front())[0].sagged);
}
