#include "model/headroom/headroom.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

using namespace model;
using headroom::lowestOver;

namespace {

constexpr double kTape_m = 2e-4; // lowestOver is good to a tenth of a millimetre along an edge

Polygon box(double west, double south, double east, double north)
{
    return {{west, south}, {east, south}, {east, north}, {west, north}};
}

struct Case {
    const char* name;
    Curtain curtain;
    Polygon strip;
    double height_m;
};

} // namespace

// Closed form: heights worked out by hand from right triangles 3-4-5 (0.3, 0.4, 0.5).
TEST(LowestOver, AgreesWithShapesWorkedByHand)
{
    const Curtain level{{0, 0, 3}, {4, 0, 3}, 0.5, 0};
    const Curtain sphere{{0, 0, 3}, {0, 0, 3}, 1.0, 0};
    const Curtain rising{{0, 0, 2}, {4, 0, 5}, 0.5, 0}; // slope 3 in 4: underside 0.5 / 0.8 lower
    const Curtain hanging{{0, 0, 4}, {4, 0, 4}, 0.5, 1.5};
    const Curtain upright{{0, 0, 2}, {0, 0, 5}, 0.5, 0};
    const Polygon notched = {{-3, -3}, {3, -3}, {3, 3}, {0.6, 3}, {0.6, -2}, {-3, -2}};
    const Case cases[] = {
        {"a level limb across a strip", level, box(1, -2, 2, 2), 2.5},
        {"a level limb longer than the strip on all sides", level, box(1.9, -0.1, 2.1, 0.1), 2.5},
        {"a level limb beside a strip", level, box(1, 0.3, 2, 2), 2.6},
        {"a level limb whose middle is off the strip", level, box(3, -2, 6, 2), 2.5},
        {"the round end of a level limb", level, box(4.3, -2, 6, 2), 2.6},
        {"a sphere over the middle", sphere, box(-1, -1, 1, 1), 2.0},
        {"a sphere beside an edge", sphere, box(0.6, -2, 2, 2), 2.2},
        {"a sphere off a corner", sphere, box(0.48, 0.36, 2, 2), 2.2},
        {"a sphere beside a notch", sphere, notched, 2.2},
        {"a rising limb that crosses an edge", rising, box(2, -1, 6, 1), 3.5 - 0.625},
        {"a rising limb over its own low end", rising, box(-1, -1, 6, 1), 1.5},
        {"a rising limb whose side alone overhangs", rising, box(2, 0.3, 3, 2), 3.5 - 0.5},
        {"hanging shoots across a strip", hanging, box(1, -2, 2, 2), 2.0},
        {"hanging shoots beside a strip", hanging, box(1, 0.3, 2, 2), 2.1},
        {"an upright stem", upright, box(-1, -1, 1, 1), 1.5},
        {"an upright stem beside an edge", upright, box(0.3, -1, 1, 1), 1.6},
    };
    for (const auto& [name, curtain, strip, height] : cases) {
        const auto low = lowestOver(curtain, strip);
        ASSERT_TRUE(low) << name;
        OUTSIDE_NEAR(low->height_m, height, 1e-6) << name;
        const Curtain backwards{curtain.b, curtain.a, curtain.radius_m, curtain.hang_m};
        OUTSIDE_NEAR(lowestOver(backwards, strip)->height_m, height, 1e-6) << name;
        const Polygon otherWayRound(strip.rbegin(), strip.rend());
        OUTSIDE_NEAR(lowestOver(curtain, otherWayRound)->height_m, height, 1e-6) << name;
    }
}

TEST(LowestOver, SaysWhereItIs)
{
    const auto low = lowestOver({{0, 0, 2}, {4, 0, 5}, 0.5, 0}, box(2, 0.3, 3, 2));
    ASSERT_TRUE(low);
    EXPECT_NEAR(low->at_m.x, 2.0, kTape_m);
    EXPECT_NEAR(low->at_m.y, 0.3, kTape_m);
}

TEST(LowestOver, FindsNothingWhereNothingOverhangs)
{
    const Curtain limb{{0, 0, 3}, {4, 0, 3}, 0.5, 2.0};
    EXPECT_FALSE(lowestOver(limb, box(1, 0.501, 2, 3)));
    EXPECT_FALSE(lowestOver(limb, box(4.501, -1, 6, 1)));
    EXPECT_FALSE(lowestOver(limb, box(4.36, 0.36, 6, 6))); // inside the box round it, off its end
    EXPECT_TRUE(lowestOver(limb, box(4.35, 0.35, 6, 6)));
}

// Brute force: over a fine grid nothing is lower, and what was found is really there.
TEST(LowestOver, IsTheLowestOfAFineGridOverRandomStrips)
{
    std::mt19937 engine(20);
    const auto pick = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(engine()) / 4294967296.0;
    };
    int met = 0;
    for (int round = 0; round < 400; ++round) {
        const Vec3 a{pick(-3, 3), pick(-3, 3), pick(1, 5)};
        const bool level = round % 5 == 0;
        const Vec3 b{pick(-3, 3), pick(-3, 3), level ? a.z : pick(1, 5)};
        const Curtain curtain{a, round % 7 == 0 ? a : b, pick(0.05, 1.5),
                              round % 2 == 0 ? 0.0 : pick(0, 3)};
        Polygon strip; // a star: as often hollow as not
        const Point2 middle{pick(-4, 4), pick(-4, 4)};
        const int corners = 3 + round % 7;
        for (int i = 0; i < corners; ++i) {
            const double turn = 2.0 * std::numbers::pi * (i + pick(0, 0.8)) / corners;
            strip.push_back(middle + pick(0.3, 4) * Point2{std::cos(turn), std::sin(turn)});
        }
        const auto low = lowestOver(curtain, strip);
        std::optional<double> lowestOnGrid;
        for (const auto at : gridPoints(strip, 0.05))
            if (const auto height = undersideHeight_m(curtain, at))
                lowestOnGrid = std::min(lowestOnGrid.value_or(1e9), *height);
        if (!low) {
            EXPECT_FALSE(lowestOnGrid) << round;
            continue;
        }
        ++met;
        EXPECT_LE(low->height_m, lowestOnGrid.value_or(1e9) + kTape_m) << round;
        const auto there = undersideHeight_m(curtain, low->at_m);
        ASSERT_TRUE(there) << round;
        OUTSIDE_NEAR(*there, low->height_m, 1e-9) << round;
        // On the strip to rounding: a place on an edge may be counted out by the last bit.
        EXPECT_LT(distance_m({low->at_m, low->at_m + Point2{1e-9, 0}}, strip), 1e-6) << round;
    }
    EXPECT_GE(met, 150); // half of the pairs or so meet
}
