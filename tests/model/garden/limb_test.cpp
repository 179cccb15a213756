#include "model/garden/limb.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

using namespace model;

namespace {

/// 5 m up a 3-4-5 slope, then 2 m level: 0.4 m thick at the union, 0.3 at the bend, 0.1 at the tip.
Limb bent()
{
    Limb limb;
    limb.stations = {{{0, 0, 1}, 0.4}, {{4, 0, 4}, 0.3}, {{4, 2, 4}, 0.1}};
    return limb;
}

void expectNear(Vec3 a, Vec3 b)
{
    EXPECT_NEAR(norm(a - b), 0.0, 1e-12)
        << "(" << a.x << ", " << a.y << ", " << a.z << ") against (" << b.x << ", " << b.y << ", "
        << b.z << ")";
}

} // namespace

TEST(LimbLength, IsTheSumOfItsStretches)
{
    EXPECT_DOUBLE_EQ(length_m(bent()), 7.0);
    EXPECT_DOUBLE_EQ(length_m(Limb{}), 0.0);
}

TEST(AxisPoint, IsStraightAndEvenlyTaperedBetweenStations)
{
    const auto half = axisPoint(bent(), 2.5);
    expectNear(half.position_m, {2, 0, 2.5});
    EXPECT_DOUBLE_EQ(half.diameter_m, 0.35);
    expectNear(half.direction, {0.8, 0, 0.6});
    const auto outer = axisPoint(bent(), 6.0);
    expectNear(outer.position_m, {4, 1, 4});
    EXPECT_NEAR(outer.diameter_m, 0.2, 1e-15);
    expectNear(outer.direction, {0, 1, 0});
}

TEST(AxisPoint, KeepsToTheEnds)
{
    expectNear(axisPoint(bent(), -3.0).position_m, {0, 0, 1});
    EXPECT_DOUBLE_EQ(axisPoint(bent(), -3.0).diameter_m, 0.4);
    expectNear(axisPoint(bent(), 99.0).position_m, {4, 2, 4});
    EXPECT_DOUBLE_EQ(axisPoint(bent(), 99.0).diameter_m, 0.1);
    expectNear(axisPoint(bent(), 99.0).direction, {0, 1, 0});
}

TEST(AxisPoint, PassesOverStationsThatStandTwice)
{
    auto limb = bent();
    limb.stations.insert(limb.stations.begin() + 1, limb.stations[1]);
    expectNear(axisPoint(limb, 6.0).position_m, {4, 1, 4});
    EXPECT_NEAR(norm(axisPoint(limb, 5.0).direction), 1.0, 1e-15);
}

TEST(NearestAlong, FindsThePlaceThatAxisPointGives)
{
    for (const double at : {0.0, 1.3, 4.9, 5.0, 5.2, 7.0})
        EXPECT_NEAR(nearestAlong_m(bent(), axisPoint(bent(), at).position_m), at, 1e-9);
    EXPECT_NEAR(nearestAlong_m(bent(), {2 - 0.6, 0.5, 2.5 + 0.8}), 2.5,
                1e-12); // square to the axis
    EXPECT_DOUBLE_EQ(nearestAlong_m(bent(), {-9, 0, 0}), 0.0);
    EXPECT_DOUBLE_EQ(nearestAlong_m(bent(), {4, 9, 4}), 7.0);
}

TEST(Stretch, HasItsEndsAndAllStationsBetween)
{
    const auto part = stretch(bent(), 2.5, 6.0);
    ASSERT_EQ(part.size(), 3U);
    expectNear(part[0].position_m, {2, 0, 2.5});
    EXPECT_DOUBLE_EQ(part[0].diameter_m, 0.35);
    expectNear(part[1].position_m, {4, 0, 4});
    expectNear(part[2].position_m, {4, 1, 4});
    EXPECT_EQ(stretch(bent(), 1.0, 2.0).size(), 2U);
    EXPECT_EQ(stretch(bent(), 0.0, 5.0).size(), 2U); // the bend is the end, not between
    EXPECT_EQ(stretch(bent(), 0.0, 7.0), bent().stations);
}

// Law: what is cut in two is as long together as before, wherever it is cut.
TEST(Stretch, PartsAddUpToTheLimb)
{
    std::mt19937 engine(2);
    const auto pick = [&] { return static_cast<double>(engine()) / 4294967296.0; };
    for (int round = 0; round < 200; ++round) {
        Limb limb;
        for (int i = 0; i < 2 + round % 6; ++i)
            limb.stations.push_back({{pick(), pick(), pick()}, 0.1 + pick()});
        const double length = length_m(limb);
        const double at = length * pick();
        Limb inner = limb;
        inner.stations = stretch(limb, 0.0, at);
        Limb outer = limb;
        outer.stations = stretch(limb, at, length);
        EXPECT_NEAR(length_m(inner), at, 1e-12);
        EXPECT_NEAR(length_m(outer), length - at, 1e-12);
        EXPECT_EQ(inner.stations.back(), outer.stations.front());
    }
}
