#include "model/geometry/angle.hpp"
#include "model/light/daylight.hpp"
#include "model/light/scene.hpp"
#include "model/light/shadow.hpp"
#include "model/light/sky_dome.hpp"
#include "model/light/surface.hpp"
#include "tests/outside/outside_check.hpp"

#include "garden_of.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

using namespace model;
using namespace model::light;
using namespace std::chrono;

namespace {

Vec3 towards(double elevation_deg, double azimuth_deg)
{
    return towardsSun({elevation_deg, azimuth_deg, 1.0});
}

Ground falling(double angle_deg, double bearing_deg)
{
    return Ground(Slope{std::tan(radians(angle_deg)), bearing_deg, {}});
}

} // namespace

// Closed form: on ground that rises by b along it, a shadow is H / (tan h + tan b) long on plan.
TEST(Slope, ShortensAShadowUphill)
{
    for (const auto& [rise_deg, length] :
         {std::pair{-10.0, 24.9362}, std::pair{-5.0, 20.4139}, std::pair{0.0, 17.3205},
          std::pair{5.0, 15.0412}, std::pair{10.0, 13.2683}}) {
        const Curtain pole{{0, 0, 0}, {0, 0, 10}, 1e-5, 0.0};
        const auto outline = shadowOutline(pole, towards(30.0, 180.0), falling(rise_deg, 180.0));
        double north = 0.0;
        for (const auto corner : outline)
            north = std::max(north, corner.y);
        OUTSIDE_NEAR(north, length, 1e-3) << rise_deg;
    }
}

// Closed form: the disc that a ball shows the sun covers pi r^2 / (n.u) of a plane with normal n,
// and n.z of that on plan.
TEST(Slope, LaysABallsShadowOnThePlane)
{
    const Curtain ball{{0, 0, 6}, {0, 0, 6}, 2.0, 0.0};
    for (const double azimuth : {180.0, 225.0, 300.0}) {
        const auto ground =
            Ground(Slope{std::hypot(0.1, 0.05), degrees(std::atan2(0.1, -0.05)), {}});
        const Vec3 u = towards(40.0, azimuth);
        const double area = std::numbers::pi * 4.0 * ground.normal().z / dot(ground.normal(), u);
        OUTSIDE_NEAR(area_m2(shadowOutline(ball, u, ground)), area, 0.001 * area);
    }
}

TEST(Slope, HasNoShadowWhileTheSunIsBehindTheHill)
{
    const Curtain ball{{0, 0, 6}, {0, 0, 6}, 2.0, 0.0};
    EXPECT_TRUE(shadowOutline(ball, towards(15.0, 180.0), falling(20.0, 0.0)).empty());
}

// Closed form: ground that falls to the equator by b meets the sun as level ground b degrees nearer
// the equator does (Lambert's equivalent latitude), whatever the hour.
TEST(Slope, MeetsTheSunAsLevelGroundNearerTheEquator)
{
    const double b = 12.0;
    const auto ground = falling(b, 180.0);
    const auto bed = levelSurface(made::bed({0, 0}, 1.0), ground);
    const auto day = sys_days{year{2025} / May / 5};
    for (int hour = 5; hour < 20; ++hour) {
        const auto here = sunPosition(day + hours{hour}, 50.0, 0.0);
        const auto there = sunPosition(day + hours{hour}, 50.0 - b, 0.0);
        if (here.elevation_deg <= 0.0 || there.elevation_deg <= 0.0)
            continue;
        // Parallax depends on the latitude a little: 0.002 degrees at most.
        OUTSIDE_NEAR(facing(bed, towardsSun(here)), std::sin(radians(there.elevation_deg)), 5e-5)
            << hour;
    }
}

// Closed form: an open plane tilted by b sees (1 + cos b) / 2 of an even sky.
TEST(Slope, SeesLessOfTheSky)
{
    const double b = 20.0;
    const auto sky = [](const Surface& surface) {
        double sum = 0.0;
        for (const Vec3 each : skyDirections(20000))
            sum += 2.0 / 20000 * facing(surface, each);
        return sum;
    };
    OUTSIDE_NEAR(sky(levelSurface(made::bed({0, 0}, 1.0), falling(b, 60.0))),
                 (1.0 + std::cos(radians(b))) / 2.0, 1e-3);
}

// Law: things stand on the ground that is under them.
TEST(Slope, CarriesTreesPlantingsAndWalls)
{
    auto garden = made::garden(48.0);
    garden.slope = Slope{0.25, 180.0, {}}; // rises to the north
    garden.trees.push_back(made::ballTree("uphill", {0.0, 8.0}, 4.0, 1.0));
    Structure wall;
    wall.kind = StructureKind::fence;
    wall.height_m = 2.0;
    wall.outline_m = {{-1, -5}, {1, -5}, {1, -3}, {-1, -3}};
    garden.structures.push_back(wall);
    const auto tables = made::tables();
    const auto lit = scene(garden, foliations(garden, tables), tables, year{2025} / June / 1);
    EXPECT_NEAR(lit.trees.front().leaves.front().solid.b.z, 2.0 + 4.0, 1e-9);
    EXPECT_NEAR(lit.structures.front().top_m, -1.0 + 2.0, 1e-12);
    EXPECT_NEAR(lit.structures.front().base_m, -1.25, 1e-12);
    const auto bed = levelSurface(garden.plantings.front(), Ground(garden.slope));
    for (const Vec3 point : bed.points_m)
        EXPECT_NEAR(point.z, 0.25 * point.y, 1e-12);
}

// Law: what falls to the west by the evening sun is what falls to the east by the morning's.
TEST(Slope, MirrorsEastAndWest)
{
    const auto hoursOn = [](double bearing_deg) {
        auto garden = made::garden(45.0);
        garden.slope = Slope{0.4, bearing_deg, {}};
        return plantingSun(garden, made::tables(), year{2025} / June / 21).front().sun_h;
    };
    EXPECT_NEAR(hoursOn(90.0), hoursOn(270.0), 0.17); // a step of ten minutes
}
