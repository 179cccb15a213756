#include "model/geometry/angle.hpp"
#include "model/light/daylight.hpp"
#include "model/light/scene_beam.hpp"
#include "model/light/shadow.hpp"
#include "model/light/surface.hpp"
#include "model/light/year_light.hpp"
#include "tests/outside/outside_check.hpp"

#include "garden_of.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace model;
using namespace model::light;
using std::chrono::year;

namespace {

Vec3 towards(double elevation_deg, double azimuth_deg)
{
    return towardsSun({elevation_deg, azimuth_deg, 1.0});
}

Neighbour roundNeighbour(Point2 at, double height_m, double radius_m)
{
    Neighbour made;
    made.id = "oak";
    made.species = "Arbor testis";
    made.position_m = at;
    made.height_m = height_m;
    made.crownBase_m = height_m - 2.0 * radius_m;
    made.spread_m = 2.0 * radius_m;
    return made;
}

Planting hedge(const std::string& id, Polygon outline, double height_m)
{
    Planting planting;
    planting.id = id;
    planting.kind = PlantingKind::hedge;
    planting.outline_m = std::move(outline);
    planting.height_m = height_m;
    return planting;
}

} // namespace

// Closed form, worked outside this program and checked against a polygon hull there: plan ellipse
// with matrix S = Q Sigma QT; centre, area.
TEST(CrownShadow, IsTheClosedFormsEllipse)
{
    struct Row {
        Ellipsoid crown;
        Vec3 sun;
        Ground ground;
        Point2 centre;
        double area_m2;
    };
    const auto wide = uprightEllipsoid({0, 0, 6}, 90.0, 4.0, 3.0, 2.0);
    const auto tall = uprightEllipsoid({1, 2, 5}, 0.0, 2.0, 2.0, 4.0);
    const Ground tilted(Slope{std::hypot(0.1, 0.05), degrees(std::atan2(0.1, -0.05)), {}});
    for (const auto& [crown, sun, ground, centre, area] :
         {Row{wide, towards(40, 225), {}, {5.0562, 5.0562}, 46.0663},
          Row{wide, towards(40, 225), tilted, {5.2786, 5.2786}, 48.0926},
          Row{tall, towards(25, 120), {}, {-8.2860, 7.3613}, 55.3429}}) {
        const auto outline = shadowOutline(crown, sun, ground);
        OUTSIDE_NEAR(area_m2(outline), area, 0.001 * area);
        OUTSIDE_NEAR(centroid(outline).x, centre.x, 1e-4);
        OUTSIDE_NEAR(centroid(outline).y, centre.y, 1e-4);
    }
}

// Brute force: packs of rays through ellipsoids and a stem against single rays in double precision.
TEST(NeighbourBeam, GivesEachRayThePathThatItHasAlone)
{
    const auto tables = made::tables();
    Garden garden = made::garden(50.0);
    for (const double east : {-3.0, 0.0, 2.0}) {
        auto one = roundNeighbour({east, -3.0}, 7.0 + east, 1.5);
        one.across_m = 2.0;
        one.bearing_deg = 20.0 * east;
        one.stemDiameter_m = 0.4;
        one.density = east > 0.0 ? FoliageDensity::dense : FoliageDensity::sparse;
        garden.neighbours.push_back(one);
    }
    const auto lit = scene(garden, {}, tables, year{2025} / std::chrono::June / 1);
    const auto bed = levelSurface(garden.plantings.front());
    const auto packs = receivers(bed.points_m, bed.points_m.front());
    SceneBeam beam(lit, bed.points_m.front());
    PackLight light;
    double shaded = 0.0;
    for (double azimuth = 90.0; azimuth < 270.0; azimuth += 7.0)
        for (const double elevation : {12.0, 35.0, 61.0, 88.0}) {
            const Vec3 sun = towards(elevation, azimuth);
            beam.aim(sun);
            beam.turnTo(packs);
            for (std::size_t index = 0; index < packs.packs.size(); ++index) {
                const auto& pack = packs.packs[index];
                beam.trace(index, light);
                for (std::size_t i = 0; i < pack.count; ++i) {
                    double alone = 1.0;
                    for (const auto& tree : lit.trees)
                        alone *= transmittance(tree, bed.points_m[pack.point[i]], sun);
                    // A ray that grazes the stem may fall either way in float.
                    if (std::abs(light.all[i] - alone) > 2e-4) {
                        EXPECT_TRUE(light.all[i] == 0.0F || alone == 0.0);
                        continue;
                    }
                    shaded += 1.0 - alone;
                }
            }
        }
    EXPECT_GT(shaded, 100.0);
}

// Law: a garden mirrored north for south, under a sun mirrored too, lets the same light through,
// ray by ray: trees with hanging shoots, neighbours, walls and hedges.
TEST(Scene, MirrorsNorthForSouth)
{
    const auto tables = made::tables();
    auto north = made::garden(50.0);
    north.trees.push_back(made::ballTree("t", {1.0, -4.0}, 4.0, 1.6));
    north.trees.front().limbs.front().foliage->hanging_m = 1.5;
    north.neighbours.push_back(roundNeighbour({-2.0, -5.0}, 7.0, 1.8));
    north.neighbours.front().bearing_deg = 35.0;
    north.neighbours.front().across_m = 2.0;
    north.plantings.push_back(hedge("h", {{-3, -2}, {3, -2}, {3, -1.5}, {-3, -1.5}}, 1.4));
    auto south = north;
    const auto flip = [](Point2& p) { p.y = -p.y; };
    flip(south.trees.front().position_m);
    flip(south.neighbours.front().position_m);
    south.neighbours.front().bearing_deg = 180.0 - 35.0;
    for (auto& planting : south.plantings)
        std::ranges::for_each(planting.outline_m, flip);
    const auto date = year{2025} / std::chrono::June / 1;
    const auto there = scene(north, foliations(north, tables), tables, date);
    const auto here = scene(south, foliations(south, tables), tables, date);
    const auto through = [](const Scene& lit, Vec3 from, Vec3 sun) {
        double share = transmittance(lit.structures, from, sun);
        for (const auto& tree : lit.trees)
            share *= transmittance(tree, from, sun);
        return share;
    };
    double shaded = 0.0;
    for (double x = -2.0; x <= 2.0; x += 0.37)
        for (double azimuth = 95.0; azimuth < 265.0; azimuth += 11.0)
            for (const double elevation : {14.0, 33.0, 52.0}) {
                const Vec3 sun = towards(elevation, azimuth);
                const double one = through(there, {x, 0.2, 0.0}, sun);
                const double other = through(here, {x, -0.2, 0.0}, {sun.x, -sun.y, sun.z});
                EXPECT_NEAR(one, other, 1e-9);
                shaded += 1.0 - one;
            }
    EXPECT_GT(shaded, 30.0);
}

// Law: a crown drawn as one ball is the tree drawn as one ball of leaf, stem apart.
TEST(Neighbour, ShadesAsTheSameCrownOfATreeDoes)
{
    const auto tables = made::tables();
    auto drawn = made::garden(48.0);
    drawn.trees.push_back(made::ballTree("oak", {0.5, -3.0}, 5.0, 2.0));
    drawn.trees.front().limbs.front().stations[0].diameter_m = 0.002;
    drawn.trees.front().limbs.front().stations[1].diameter_m = 0.001;
    auto told = made::garden(48.0);
    told.neighbours.push_back(roundNeighbour({0.5, -3.0}, 7.0, 2.0));
    const auto date = year{2025} / std::chrono::April / 21;
    const auto one = plantingSun(drawn, tables, date).front();
    const auto other = plantingSun(told, tables, date).front();
    EXPECT_LT(other.sun_h, other.openSky_h - 1.0);
    EXPECT_NEAR(one.sun_h, other.sun_h, 0.02);
    ASSERT_EQ(other.trees.size(), 1U);
    EXPECT_EQ(other.trees.front().tree, "oak");
    EXPECT_NEAR(other.trees.front().lost_h, other.openSky_h - other.sun_h, 1e-6);
}

// Law: a neighbour's share is told apart from the trees', and it has no limbs.
TEST(Neighbour, HasItsOwnShareOfTheYear)
{
    auto garden = made::garden(48.0);
    garden.trees.push_back(made::ballTree("near", {0.0, -2.5}, 4.0, 1.2));
    garden.neighbours.push_back(roundNeighbour({0.0, -6.0}, 8.0, 2.0));
    const auto tables = made::tables();
    LightQuestion question;
    question.year = year{2025};
    question.detail = {std::chrono::minutes{30}, 1, 60, true, 1};
    const auto light =
        yearOfLight(garden, foliations(garden, tables), tables, question).front().months[3];
    ASSERT_EQ(light.neighbours.size(), 1U);
    ASSERT_EQ(light.trees.size(), 1U);
    EXPECT_EQ(light.limbs.size(), 1U);
    EXPECT_GT(light.neighbours.front().removal.sun_h, 0.1);
    EXPECT_GE(light.neighbours.front().firstIn.sun_h, light.neighbours.front().removal.sun_h);
    const double both = light.withoutTrees.sun_h - light.standing.sun_h;
    EXPECT_GE(light.trees.front().firstIn.sun_h + light.neighbours.front().firstIn.sun_h,
              both - 1e-6);
}

// Closed form: an upright cylinder of radius r and height H on the ground shades
// pi r^2 + 2 r H / tan h of it; here a hedge of 90 corners, counted on a fine grid of ground.
TEST(HedgeShadow, OfACylinderIsTwoDiscsAndABand)
{
    Polygon ring;
    for (int i = 0; i < 90; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / 90.0;
        ring.push_back({2.0 * std::cos(angle), 2.0 * std::sin(angle)});
    }
    const auto solid = prism(hedge("round", ring, 6.0)).value();
    const Vec3 sun = towards(60.0, 180.0);
    constexpr double kGrid_m = 0.02;
    double area = 0.0;
    for (double x = -3.0; x < 3.0; x += kGrid_m)
        for (double y = -3.0; y < 7.0; y += kGrid_m)
            area += transmittance(solid, {x, y, 0.0}, sun) == 0.0 ? kGrid_m * kGrid_m : 0.0;
    OUTSIDE_NEAR(area, 26.4228, 0.003 * 26.4228); // the ring has 0.08 % less area than its circle
}

// Law: a hedge shades what grows beside it and not itself; a bed's height shades nothing.
TEST(HedgeShadow, FallsOnOtherPlantingsOnly)
{
    auto garden = made::garden(50.0);
    const Polygon south{{-3, -2.5}, {3, -2.5}, {3, -1.5}, {-3, -1.5}};
    garden.plantings.push_back(hedge("south", south, 2.0));
    const auto date = year{2025} / std::chrono::March / 21;
    const auto tables = made::tables();
    const auto sun = plantingSun(garden, tables, date);
    EXPECT_LT(sun[0].sun_h, sun[0].openSky_h - 2.0);
    EXPECT_EQ(sun[0].withoutTrees_h, sun[0].sun_h);
    EXPECT_NEAR(sun[1].sun_h, sun[1].openSky_h, 1e-6);
    garden.plantings[1].kind = PlantingKind::bed;
    EXPECT_NEAR(plantingSun(garden, tables, date)[0].sun_h, sun[0].openSky_h, 1e-6);
}
