#include "model/garden/ground.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <cmath>

using namespace model;

TEST(Ground, IsLevelWithoutASlope)
{
    const Ground level;
    EXPECT_TRUE(level.isLevel());
    EXPECT_EQ(level.at({3.0, -4.0}, 1.5), (Vec3{3.0, -4.0, 1.5}));
    EXPECT_EQ(level.normal(), (Vec3{0.0, 0.0, 1.0}));
    EXPECT_TRUE(Ground(Slope{0.0, 90.0, {}}).isLevel());
}

// Closed form: one in five falling to the east; ten metres west of the origin lie two metres up.
TEST(Ground, FallsToItsBearing)
{
    const Ground ground(Slope{0.2, 90.0, {}});
    OUTSIDE_NEAR(ground.height_m({-10.0, 0.0}), 2.0, 1e-12);
    OUTSIDE_NEAR(ground.height_m({10.0, 7.0}), -2.0, 1e-12);
    OUTSIDE_NEAR(ground.normal().x, 0.2 / std::sqrt(1.04), 1e-12);
    OUTSIDE_NEAR(ground.normal().y, 0.0, 1e-12);
    OUTSIDE_NEAR(norm(ground.normal()), 1.0, 1e-12);
}

TEST(Ground, FallsToTheSouthWestByBothAxes)
{
    const Ground ground(Slope{0.1, 225.0, {}});
    EXPECT_NEAR(ground.height_m({-1.0, -1.0}), -0.1 * std::sqrt(2.0), 1e-12);
    EXPECT_NEAR(ground.height_m({1.0, -1.0}), 0.0, 1e-12);
}
