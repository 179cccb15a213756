#include "model/sketch/measured_height.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

namespace model::sketch {
namespace {

// Closed form: a stick of 1 m throws 1.5 m when a tree of 12 m throws 18 m.
TEST(HeightByShadow, IsThatOfSimilarTriangles)
{
    EXPECT_DOUBLE_EQ(height_m(Shadows{1.0, 1.5, 18.0}).value(), 12.0);
    EXPECT_DOUBLE_EQ(height_m(Shadows{2.0, 3.0, 18.0}).value(), 12.0); // whatever the stick
    EXPECT_FALSE(height_m(Shadows{1.0, 0.0, 18.0}));
    EXPECT_FALSE(height_m(Shadows{-1.0, 1.5, 18.0}));
}

// Closed form: at 45 degrees the top is as far above the eye as the stem is away; at 30 degrees by
// the square root of a third of that.
TEST(HeightByAngle, IsDistanceTimesTangentOverTheEye)
{
    OUTSIDE_NEAR(height_m(Sighting{45.0, 10.0, 1.6}).value(), 11.6, 1e-12);
    OUTSIDE_NEAR(height_m(Sighting{30.0, 10.0, 0.0}).value(), 5.773502692, 1e-9);
    EXPECT_FALSE(height_m(Sighting{0.0, 10.0, 1.6}));
    EXPECT_FALSE(height_m(Sighting{89.0, 10.0, 1.6}));
    EXPECT_FALSE(height_m(Sighting{45.0, 0.0, 1.6}));
}

} // namespace
} // namespace model::sketch
