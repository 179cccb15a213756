#include "model/geometry/angle.hpp"
#include "model/light/daylight.hpp"
#include "model/light/shadow.hpp"
#include "tests/outside/outside_check.hpp"

#include "garden_of.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

using namespace model;
using namespace model::light;

namespace {

Vec3 towards(double elevation_deg, double azimuth_deg)
{
    return towardsSun({elevation_deg, azimuth_deg, 1.0});
}

double farthest(const Polygon& outline, Point2 direction)
{
    double most = -1e9;
    for (const auto corner : outline)
        most = std::max(most, corner.x * direction.x + corner.y * direction.y);
    return most;
}

} // namespace

// Closed form: a ball's shadow is an ellipse of area pi r^2 / sin h, centred zc / tan h from its
// foot.
TEST(ShadowOutline, OfABallIsAnEllipse)
{
    for (const double h : {30.0, 60.0}) {
        const Curtain ball{{0, 0, 5}, {0, 0, 5}, 3.0, 0.0};
        const auto outline = shadowOutline(ball, towards(h, 180.0));
        const double area = std::numbers::pi * 9.0 / std::sin(radians(h));
        OUTSIDE_NEAR(area_m2(outline), area, 0.001 * area);
        OUTSIDE_NEAR(centroid(outline).x, 0.0, 1e-9);
        OUTSIDE_NEAR(centroid(outline).y, 5.0 / std::tan(radians(h)), 1e-6);
    }
}

// Closed form: two end ellipses and the band between them, pi r^2/sin h + w |q|; the figure for
// this capsule was worked outside this program and checked against a polygon hull.
TEST(ShadowOutline, OfACapsuleIsTwoEllipsesAndABand)
{
    const Curtain capsule{{-2, 0, 4}, {3, 1, 6}, 1.5, 0.0};
    OUTSIDE_NEAR(area_m2(shadowOutline(capsule, towards(40.0, 210.0))), 35.8375, 0.036);
}

// Closed form: the shadow of a pole of height H ends H / tan h from its foot.
TEST(ShadowOutline, OfAPoleEndsWhereTheTangentSays)
{
    for (const auto& [h, length] :
         {std::pair{10.0, 5.67128}, std::pair{30.0, 1.73205}, std::pair{45.0, 1.0}}) {
        const Curtain pole{{0, 0, 0}, {0, 0, 1}, 1e-5, 0.0};
        OUTSIDE_NEAR(farthest(shadowOutline(pole, towards(h, 180.0)), {0.0, 1.0}), length, 1e-3);
    }
}

// Closed form: a hanging curtain of no thickness to speak of is a parallelogram, and so is its
// shadow: |along x drop| on plan.
TEST(ShadowOutline, OfAThinHangingCurtainIsAParallelogram)
{
    const Curtain curtain{{-2, 0, 6}, {2, 0, 6}, 1e-4, 3.0};
    const double area = 4.0 * 3.0 / std::tan(radians(35.0));
    OUTSIDE_NEAR(area_m2(shadowOutline(curtain, towards(35.0, 180.0))), area, 0.01);
}

// Law: what is under the ground throws no shadow; a half-buried ball's starts at its rim.
TEST(ShadowOutline, BeginsAtTheGround)
{
    EXPECT_TRUE(
        shadowOutline(Curtain{{0, 0, -3}, {0, 0, -3}, 2.0, 0.0}, towards(20.0, 180.0)).empty());
    const auto half = shadowOutline(Curtain{{0, 0, 0}, {0, 0, 0}, 2.0, 0.0}, towards(20.0, 180.0));
    EXPECT_NEAR(farthest(half, {0.0, -1.0}), 2.0, 0.02);
    EXPECT_NEAR(farthest(half, {0.0, 1.0}), 2.0 / std::sin(radians(20.0)), 0.03);
}

// Law: the whole tree's outline covers its crown's and its stem's, and there is none at night.
TEST(Shadow, IsCrownAndStemInOnePiece)
{
    const auto tree = made::ballTree("t", {10.0, 0.0}, 5.0, 2.0);
    const auto region = shadow(tree, {30.0, 180.0, 1.0});
    ASSERT_EQ(region.size(), 1U);
    const double crown = std::numbers::pi * 4.0 / std::sin(radians(30.0));
    EXPECT_GT(area_m2(region), crown);
    EXPECT_LT(area_m2(region), 1.1 * crown);
    EXPECT_TRUE(covers(region.front().rings.front(), {10.0, 5.0 / std::tan(radians(30.0))}));
    EXPECT_TRUE(shadow(tree, {1.0, 180.0, 1.0}).empty());
}
