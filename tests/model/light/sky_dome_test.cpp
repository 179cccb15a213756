#include "model/light/beam.hpp"
#include "model/light/canopy.hpp"
#include "model/light/sky_dome.hpp"

#include <gtest/gtest.h>

using namespace model;
using namespace model::light;

namespace {

constexpr int kMany = 20000;

double skyUnderABall(Vec3 from, double extinction, int count)
{
    Canopy tree;
    tree.leaves.push_back({Curtain{{0, 0, 5}, {0, 0, 5}, 3.0, 0.0}, 1.0, 0, {{0, 0, 5}, 3.0}});
    tree.leafAreaDensity_1_m = extinction / 0.4997;
    tree.leafAngleX = 1.0;
    tree.bounds = {{0, 0, 5}, 3.0};
    double sum = 0.0;
    for (const Vec3 towards : skyDirections(count))
        sum += skyShare(towards, {0, 0, 1}, count) * transmittance(tree, from, towards);
    return sum;
}

} // namespace

// Law: an even sky gives level ground all of its light and an upright face half.
TEST(SkyShare, AddsUpOverTheSky)
{
    double level = 0.0;
    double upright = 0.0;
    for (const Vec3 towards : skyDirections(200)) {
        EXPECT_NEAR(norm(towards), 1.0, 1e-12);
        level += skyShare(towards, {0, 0, 1}, 200);
        upright += skyShare(towards, {0.6, 0.8, 0}, 200);
    }
    EXPECT_NEAR(level, 1.0, 1e-12);
    EXPECT_NEAR(upright, 0.5, 0.002);
}

struct UnderBall {
    Vec3 from;
    double opaque, leafy, bare; // shares let through
};
class UnderBalls : public testing::TestWithParam<UnderBall> {};

// Closed form: an opaque ball of radius r at distance d blocks (r/d)^2 cos(zenith of its middle) of
// an even sky. The leafy ones (0.25 and 0.07 per metre) were integrated outside this program.
INSTANTIATE_TEST_SUITE_P(Table, UnderBalls,
                         testing::Values(UnderBall{{0, 4, 0}, 1 - 0.17141, 0.89596, 0.95879},
                                         UnderBall{{0, 6, 0}, 1 - 0.09445, 0.94267, 0.97729},
                                         UnderBall{{0, 10, 0}, 1 - 0.03220, 0.98046, 0.99226},
                                         UnderBall{{0, 0, 0}, 1 - 0.36000, 0.78149, 0.91344},
                                         UnderBall{{0, 0, 1.5}, 1 - 0.73469, 0.55407, 0.82335}));

TEST_P(UnderBalls, LetThroughTheClosedFormsShareOfTheSky)
{
    const auto& row = GetParam();
    EXPECT_NEAR(skyUnderABall(row.from, 1e4, kMany), row.opaque, 0.0006); // 20,000 directions
    EXPECT_NEAR(skyUnderABall(row.from, 0.25, kMany), row.leafy, 0.0003);
    EXPECT_NEAR(skyUnderABall(row.from, 0.07, kMany), row.bare, 0.0002);
}

TEST_P(UnderBalls, NeedOnlyTwoHundredDirectionsToOnePerCent)
{
    const auto& row = GetParam();
    EXPECT_NEAR(skyUnderABall(row.from, 0.25, 200), row.leafy, 0.01);
}
