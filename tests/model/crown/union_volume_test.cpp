#include "model/crown/union_volume.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

using namespace model;

namespace {

constexpr double kPi = std::numbers::pi;

LeafyBody ball(Vec3 middle, double radius)
{
    LeafyBody body;
    body.solid = {middle, middle, radius, 0.0};
    return body;
}

} // namespace

// Closed form: balls and capsules, apart, one inside the other, and two that share a lens of
// height r: 2 * 4/3 pi r^3 - 5/12 pi r^3 for middles r apart.
TEST(UnionVolume, AgreesWithClosedFormsToAHundredthAtAnEighthOfTheRadius)
{
    const double one = 4.0 / 3.0 * kPi;
    const auto near = [](const std::vector<LeafyBody>& bodies, double volume) {
        OUTSIDE_NEAR(unionVolume_m3(bodies, 0.125), volume, 0.01 * volume);
    };
    near({ball({0, 0, 5}, 1)}, one);
    near({ball({0.37, 0.11, 5}, 1)}, one);
    near({ball({0, 0, 5}, 1), ball({5, 0, 5}, 1)}, 2.0 * one);
    near({ball({0, 0, 5}, 1), ball({0.1, 0, 5}, 1), ball({0, 0, 5}, 1)}, // nearly the same
         2.0 * one - kPi / 12.0 * (4.0 * 1.0 + 0.1) * std::pow(2.0 - 0.1, 2));
    near({ball({0, 0, 5}, 1), ball({1, 0, 5}, 1)}, 2.0 * one - 5.0 / 12.0 * kPi);
    near({ball({0, 0, 5}, 1), ball({0, 0, 6}, 1)}, 2.0 * one - 5.0 / 12.0 * kPi);
    near({ball({0, 0, 5}, 1), ball({0, 0, 9}, 1)}, 2.0 * one); // above each other, apart
    LeafyBody curtain;
    curtain.solid = {{0, 0, 6}, {4, 1, 7}, 1.0, 2.0};
    near({curtain}, volume_m3(curtain.solid));
    near({curtain, curtain}, volume_m3(curtain.solid));
    EXPECT_EQ(unionVolume_m3({}, 0.125), 0.0);
}

// Brute force: random points, by whether any ball holds them.
TEST(UnionVolume, AgreesWithMonteCarlo)
{
    std::mt19937 engine(9);
    const auto pick = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(engine()) / 4294967296.0;
    };
    std::vector<LeafyBody> bodies;
    for (int i = 0; i < 30; ++i)
        bodies.push_back(ball({pick(-2, 2), pick(-2, 2), pick(3, 7)}, pick(0.4, 1.0)));
    constexpr int kPoints = 200000;
    int hits = 0;
    for (int i = 0; i < kPoints; ++i) {
        const Vec3 at{pick(-3, 3), pick(-3, 3), pick(2, 8)};
        hits += std::ranges::any_of(bodies, [&](const auto& body) {
            return norm(at - body.solid.a) <= body.solid.radius_m;
        });
    }
    const double share = static_cast<double>(hits) / kPoints;
    const double sigma = 216.0 * std::sqrt(share * (1.0 - share) / kPoints);
    OUTSIDE_NEAR(unionVolume_m3(bodies, 0.1), 216.0 * share, 4.0 * sigma + 0.01 * 216.0 * share);
}

// The header's own promise, over spacings that fall differently on the round sides.
TEST(UnionVolume, IsAsCloseAsItsHeaderSays)
{
    for (double part = 8.0; part < 9.0; part += 0.02) {
        auto body = ball({0, 0, 5}, 1.0);
        const double one = volume_m3(body.solid);
        EXPECT_NEAR(unionVolume_m3({body}, 1.0 / part), one, 0.005 * one) << part;
        body.solid.b.z = 8.0;
        const double upright = volume_m3(body.solid);
        EXPECT_NEAR(unionVolume_m3({body}, 1.0 / part), upright, 0.017 * upright) << part;
    }
}
