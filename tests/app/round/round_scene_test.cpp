#include "app/round/round_scene.hpp"

#include "app/round/round_tint.hpp"
#include "app/tables/tables.hpp"
#include "model/advice/prune.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/solid/closed.hpp"

#include <algorithm>
#include <numbers>

namespace app {
namespace {

using test::enclosed_m3;

std::vector<RoundPart> of(const std::vector<RoundPart>& parts, RoundKind kind)
{
    std::vector<RoundPart> some;
    std::ranges::copy_if(parts, std::back_inserter(some),
                         [&](const auto& part) { return part.kind == kind; });
    return some;
}

double volume_m3(const std::vector<RoundPart>& parts, RoundKind kind, const std::string& id = {})
{
    double all = 0.0;
    for (const auto& part : of(parts, kind))
        if (id.empty() || part.id == id)
            all += enclosed_m3(*part.solid);
    return all;
}

class RoundSceneTest : public ::testing::Test {
protected:
    RoundSceneTest()
    {
        garden_.trees[0].limbs[1].foliage->hanging_m = 0.4;
        reduced_ = model::advice::afterCut(garden_.trees[0],
                                           {model::CutKind::reduction, "bough", 1.6, {}, {}, {}});
        removed_ = model::advice::afterCut(garden_.trees[0],
                                           {model::CutKind::removal, "bough", 0.0, {}, {}, {}});
    }
    [[nodiscard]] std::vector<RoundPart> scene(const model::Tree* after, bool made,
                                               bool falling) const
    {
        const auto& species = *model::findSpecies(tables_, garden_.trees[0].species);
        const auto leaf =
            std::make_shared<const model::Foliation>(model::foliate(garden_.trees[0], species));
        return roundScene({garden_, garden_.trees.data(), after, made, falling, {{leaf, 1.0}}, {}});
    }

    model::Tables tables_ = loadTables();
    model::Garden garden_ = smallGarden();
    model::Tree reduced_;
    model::Tree removed_;
};

// Closed form: each limb is a row of frusta of a polygon of twelve sides.
TEST_F(RoundSceneTest, WoodHasTheVolumeOfTheSketch)
{
    const auto parts = scene(nullptr, false, true);
    ASSERT_EQ(of(parts, RoundKind::wood).size(), 2U);
    double m3 = 0.0;
    const auto& stem = garden_.trees[0].limbs[0];
    for (std::size_t i = 1; i < stem.stations.size(); ++i) {
        const auto& a = stem.stations[i - 1];
        const auto& b = stem.stations[i];
        const auto area = [](double d) {
            return 0.5 * 12 * d * d / 4.0 * std::sin(2.0 * std::numbers::pi / 12);
        };
        m3 += norm(b.position_m - a.position_m) / 3.0 *
              (area(a.diameter_m) + area(b.diameter_m) +
               std::sqrt(area(a.diameter_m) * area(b.diameter_m)));
    }
    EXPECT_NEAR(volume_m3(parts, RoundKind::wood, "stem"), m3, 1e-9);
    EXPECT_TRUE(of(parts, RoundKind::fallenWood).empty());
}

// Law: what stays and what falls is what stood.
TEST_F(RoundSceneTest, CutsPartTheWoodAndLoseNothingOfIt)
{
    const double whole = volume_m3(scene(nullptr, false, true), RoundKind::wood);
    for (const auto* after : {&reduced_, &removed_})
        for (const bool made : {false, true}) {
            const auto parts = scene(after, made, true);
            EXPECT_GT(volume_m3(parts, RoundKind::fallenWood, "bough"), 0.0);
            EXPECT_NEAR(volume_m3(parts, RoundKind::wood) + volume_m3(parts, RoundKind::fallenWood),
                        whole, 0.002 * whole); // a ring at the saw cut is square to one piece
        }
    EXPECT_EQ(volume_m3(scene(&removed_, true, true), RoundKind::wood, "bough"), 0.0);
}

TEST_F(RoundSceneTest, WhatFallsIsToldApartOnlyWhenAsked)
{
    const auto standing = scene(&reduced_, false, false);
    EXPECT_TRUE(of(standing, RoundKind::fallenWood).empty());
    EXPECT_NEAR(volume_m3(standing, RoundKind::wood),
                volume_m3(scene(nullptr, false, true), RoundKind::wood), 1e-9);
    const auto made = scene(&reduced_, true, false);
    EXPECT_TRUE(of(made, RoundKind::fallenWood).empty());
    EXPECT_TRUE(of(made, RoundKind::fallenLeaf).empty());
    EXPECT_LT(volume_m3(made, RoundKind::wood), volume_m3(standing, RoundKind::wood));
}

TEST_F(RoundSceneTest, ShootsThatAreLiftedFallAsTheyHungBefore)
{
    const auto lifted = model::advice::afterCut(
        garden_.trees[0], {model::CutKind::lifting, "bough", 0.0, 1.7, {}, {}});
    const auto parts = scene(&lifted, true, true);
    EXPECT_TRUE(of(parts, RoundKind::fallenWood).empty());
    EXPECT_GT(volume_m3(parts, RoundKind::fallenLeaf, "bough"),
              volume_m3(parts, RoundKind::leaf, "bough"));
}

TEST_F(RoundSceneTest, LeafOnTheTreeFallsWithTheCut)
{
    const auto area = [](const std::vector<RoundPart>& parts) {
        return test::surface_m2(*of(parts, RoundKind::shade).at(0).solid) / 2.0;
    };
    const auto& species = *model::findSpecies(tables_, garden_.trees[0].species);
    const double all_m2 = model::foliate(garden_.trees[0], species).leafArea_m2;
    EXPECT_NEAR(area(scene(nullptr, false, true)), all_m2, 0.006 * 4); // a fleck a body
    EXPECT_LT(area(scene(&removed_, true, true)), 0.9 * all_m2);
    EXPECT_NEAR(area(scene(&removed_, false, true)), all_m2, 0.006 * 4);
}

TEST_F(RoundSceneTest, TheGroundHoldsAllThatLiesOnIt)
{
    garden_.structures.push_back({"shed",
                                  "shed",
                                  model::StructureKind::building,
                                  {{20, 20}, {23, 20}, {23, 24}, {20, 24}},
                                  2.5,
                                  {}});
    const auto parts = scene(nullptr, false, true);
    EXPECT_NEAR(volume_m3(parts, RoundKind::building), 3.0 * 4.0 * 2.55, 1e-6);
    ASSERT_EQ(of(parts, RoundKind::strip).size(), 1U);
    ASSERT_EQ(of(parts, RoundKind::bed).size(), 1U);
    const auto disc = groundDisc(garden_);
    for (const auto& part : parts)
        for (const auto place : part.solid->places_m)
            EXPECT_LE(norm(plan(place) - disc.middle_m), disc.radius_m + 1e-9);
}

TEST_F(RoundSceneTest, ANeighbourHasItsCrownAndItsStem)
{
    model::Neighbour neighbour;
    neighbour.id = "spruce";
    neighbour.species = "Picea abies";
    neighbour.position_m = {12, 3};
    neighbour.height_m = 9.0;
    neighbour.crownBase_m = 1.0;
    neighbour.spread_m = 4.0;
    neighbour.stemDiameter_m = 0.3;
    garden_.neighbours.push_back(neighbour);
    const auto parts = scene(nullptr, false, true);
    // Closed form: 4/3 pi a b c, less what six steps a quarter turn cut off.
    const double crown_m3 = 4.0 / 3.0 * std::numbers::pi * 2.0 * 2.0 * 4.0;
    EXPECT_NEAR(volume_m3(parts, RoundKind::otherLeaf, "spruce"), crown_m3, 0.04 * crown_m3);
    EXPECT_EQ(of(parts, RoundKind::otherWood).size(), 1U);
}

TEST(RoundLook, ChosenLoadedAndFallingAreToldApart)
{
    DrawingPalette colours;
    colours.bark = Qt::gray;
    colours.chosen = Qt::blue;
    colours.cut = Qt::red;
    colours.leaf = Qt::green;
    colours.ink = Qt::black;
    colours.loads = {Qt::white, Qt::yellow, Qt::magenta, Qt::darkRed, Qt::darkMagenta};
    const auto colour = [&](RoundKind kind, const RoundState& state) {
        return roundLook(kind, state, colours).colour;
    };
    EXPECT_EQ(colour(RoundKind::wood, {}), colours.bark);
    EXPECT_EQ(colour(RoundKind::wood, {LimbShade{0.2, true}}), colours.loads[1]);
    EXPECT_EQ(colour(RoundKind::wood, {LimbShade{0.2, false}}), colours.ink);
    EXPECT_EQ(colour(RoundKind::wood, {LimbShade{0.2, true}, true}), colours.chosen);
    EXPECT_EQ(colour(RoundKind::fallenWood, {}), colours.cut);
    const auto made = roundLook(RoundKind::fallenWood, {{}, false, true}, colours);
    EXPECT_LT(made.colour.alphaF(), 1.0F);
    EXPECT_FALSE(made.castsShadow);                                    // it is gone
    EXPECT_FALSE(roundLook(RoundKind::wood, {}, colours).takesShadow); // its tint is read
    EXPECT_TRUE(roundLook(RoundKind::strip, {}, colours).takesShadow);
    EXPECT_TRUE(roundLook(RoundKind::shade, {}, colours).onlyShadow);
    EXPECT_LT(colour(RoundKind::leaf, {}).alphaF(), colour(RoundKind::leaf, {{}, true}).alphaF());
}

} // namespace
} // namespace app
