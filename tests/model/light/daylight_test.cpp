#include "model/light/daylight.hpp"
#include "tests/outside/outside_check.hpp"

#include "model/light/scene.hpp"
#include "model/light/sun_path.hpp"

#include "garden_of.hpp"

#include <gtest/gtest.h>

#include <stdexcept>

using namespace model;
using namespace model::light;
using std::chrono::year;
using std::chrono::year_month_day;

namespace {
constexpr year_month_day kMidsummer = year{2025} / 6 / 21;
constexpr year_month_day kMidwinter = year{2025} / 12 / 21;
} // namespace

// Law: with nothing in the garden every planting has the open sky's sun.
TEST(PlantingSun, IsTheOpenSkysWithoutTrees)
{
    const auto sun = plantingSun(made::garden(51.0), made::tables(), kMidsummer).front();
    EXPECT_GT(sun.openSky_h, 14.0);
    EXPECT_NEAR(sun.sun_h, sun.openSky_h, 1e-9);
    EXPECT_NEAR(sun.withoutTrees_h, sun.openSky_h, 1e-9);
    EXPECT_TRUE(sun.trees.empty());
}

// Closed form: the time with the sun above h is (24/180) acos((sin h - sin lat sin dec) / (cos lat
// cos dec)) hours. The clear-sky beam passes 120 W/m2 at h = 4.02 degrees in June; the declination
// at the solstice is 23.436.
TEST(PlantingSun, CountsTheSunAbove120WattsOnly)
{
    const auto sun = plantingSun(made::garden(51.48), made::tables(), kMidsummer).front();
    OUTSIDE_NEAR(sun.openSky_h, 15.327, 0.01);
}

// Law: the sun does not set at 80 N in June, and does not rise in December.
TEST(PlantingSun, KnowsPolarDayAndNight)
{
    EXPECT_NEAR(plantingSun(made::garden(80.0), made::tables(), kMidsummer).front().openSky_h, 24.0,
                1e-9);
    EXPECT_EQ(plantingSun(made::garden(80.0), made::tables(), kMidwinter).front().openSky_h, 0.0);
}

// Law: taking the only tree away gives the garden without trees; of two trees each gives back less
// than both.
TEST(PlantingSun, TellsWhatEachTreeKeepsAway)
{
    auto garden = made::garden(51.0);
    garden.trees.push_back(made::ballTree("south", {0.0, -4.0}, 4.0, 2.0));
    const auto one = plantingSun(garden, made::tables(), kMidsummer).front();
    ASSERT_EQ(one.trees.size(), 1U);
    EXPECT_EQ(one.trees.front().tree, "south");
    EXPECT_GT(one.trees.front().lost_h, 0.2);
    EXPECT_NEAR(one.trees.front().sunWithout_h, one.openSky_h, 1e-6);
    EXPECT_NEAR(one.trees.front().lost_h, one.openSky_h - one.sun_h, 1e-6);

    garden.trees.push_back(made::ballTree("far south", {0.0, -8.0}, 8.0, 3.0));
    const auto two = plantingSun(garden, made::tables(), kMidsummer).front();
    EXPECT_LT(two.sun_h, one.sun_h);
    EXPECT_NEAR(two.withoutTrees_h, two.openSky_h, 1e-9);
    for (const auto& tree : two.trees)
        EXPECT_LE(tree.sunWithout_h, two.withoutTrees_h);
    EXPECT_NEAR(two.trees[1].sunWithout_h, one.sun_h, 1e-5);
}

// Law: a garden mirrored north for south, half a year and half a turn of the earth's tilt later,
// has much the same sun (the sun itself mirrors only to a few minutes).
TEST(PlantingSun, MirrorsBetweenTheHemispheres)
{
    auto north = made::garden(40.0);
    north.trees.push_back(made::ballTree("t", {1.0, -4.0}, 4.0, 2.0));
    auto south = made::garden(-40.0);
    south.trees.push_back(made::ballTree("t", {1.0, 4.0}, 4.0, 2.0));
    const auto here = plantingSun(north, made::tables(), kMidsummer).front();
    const auto there = plantingSun(south, made::tables(), kMidwinter).front();
    EXPECT_NEAR(here.openSky_h, there.openSky_h, 0.06);
    EXPECT_NEAR(here.sun_h, there.sun_h, 0.10);
}

// Law: a wall to the south takes the midday sun from the ground and not from a hedge's top above
// it.
TEST(PlantingSun, IsTakenByWallsBelowTheirTop)
{
    auto garden = made::garden(51.0);
    Structure wall;
    wall.height_m = 3.0;
    wall.outline_m = {{-20.0, -2.2}, {20.0, -2.2}, {20.0, -2.0}, {-20.0, -2.0}};
    garden.structures.push_back(wall);
    garden.plantings.push_back(made::bed({0.0, 0.0}, 1.0, 3.0));
    const auto sun = plantingSun(garden, made::tables(), kMidwinter);
    EXPECT_LT(sun[0].withoutTrees_h, 0.3 * sun[0].openSky_h);
    EXPECT_NEAR(sun[1].withoutTrees_h, sun[1].openSky_h, 1e-9);
}

// Law: a tree that was cut keeps the leaf density of its sketch, so less tree is never more shade.
TEST(PlantingSun, UsesTheLeafOfTheSketchForACutTree)
{
    auto garden = made::garden(51.0);
    garden.trees.push_back(made::ballTree("t", {0.0, -4.0}, 4.0, 2.0));
    const auto sketched = foliations(garden, made::tables());
    const auto before = plantingSun(garden, sketched, made::tables(), kMidsummer).front();
    garden.trees.front().limbs.front().foliage->radius_m = 1.5;
    const auto after = plantingSun(garden, sketched, made::tables(), kMidsummer).front();
    EXPECT_GT(after.sun_h, before.sun_h);
}

// Brute force: every point and step by itself, through the slow path of canopy.hpp and prism.hpp.
TEST(PlantingSun, AgreesWithOneRayAtATime)
{
    auto garden = made::garden(51.0);
    garden.trees.push_back(made::ballTree("a", {0.0, -4.0}, 4.0, 2.0));
    garden.trees.push_back(made::ballTree("b", {2.0, -6.0}, 6.0, 2.5));
    Structure wall;
    wall.height_m = 2.0;
    wall.outline_m = {{-9.0, -2.2}, {-1.0, -2.2}, {-1.0, -2.0}, {-9.0, -2.0}};
    garden.structures.push_back(wall);
    const auto tables = made::tables();
    const year_month_day day = year{2025} / 9 / 10;
    const auto sun = plantingSun(garden, tables, day).front();
    const auto lit = scene(garden, foliations(garden, tables), tables, day);
    for (std::size_t p = 0; p < sun.points_m.size(); p += 5) {
        double slow_h = 0.0;
        for (const auto& step : sunPath(garden.place, day, std::chrono::minutes{10})) {
            const Vec3 from{sun.points_m[p].x, sun.points_m[p].y, 0.0};
            double through = step.shines ? transmittance(lit.structures, from, step.towards) : 0.0;
            for (const auto& tree : lit.trees)
                through *= transmittance(tree, from, step.towards);
            slow_h += step.hours * through;
        }
        OUTSIDE_NEAR(sun.sunAtPoints_h[p], slow_h, 1e-4) << p;
    }
}

TEST(PlantingSun, RefusesATreeOfNoKnownSpecies)
{
    auto garden = made::garden(51.0);
    garden.trees.push_back(made::ballTree("t", {0.0, -4.0}, 4.0, 2.0));
    EXPECT_THROW((void)plantingSun(garden, Tables{}, kMidsummer), std::domain_error);
}
