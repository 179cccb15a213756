#include "model/geometry/angle.hpp"
#include "model/geometry/curtain.hpp"
#include "tests/model/geometry/slow_distance.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace model;

namespace {

Vec3 towards(double elevation_deg, double azimuth_deg)
{
    const double level = std::cos(radians(elevation_deg));
    return {level * std::sin(radians(azimuth_deg)), level * std::cos(radians(azimuth_deg)),
            std::sin(radians(elevation_deg))};
}

bool inside(const Curtain& curtain, Vec3 point)
{
    return distanceToSheet(curtain, point) <= curtain.radius_m;
}

/// The stretch of the ray inside the curtain, found by marching and halving.
std::optional<Interval> marched(const Curtain& curtain, Vec3 from, Vec3 direction)
{
    constexpr double kStep_m = 0.04;
    const auto in = [&](double t) { return inside(curtain, from + t * direction); };
    const auto edge = [&](double out, double within) {
        for (int i = 0; i < 40; ++i)
            (in((out + within) / 2.0) ? within : out) = (out + within) / 2.0;
        return within;
    };
    std::optional<Interval> found;
    for (int i = 0; i < 750; ++i) {
        const double t = i * kStep_m;
        if (!in(t))
            continue;
        if (!found)
            found = Interval{i == 0 ? 0.0 : edge(t - kStep_m, t), t};
        found->to = t;
    }
    if (found)
        found->to = edge(found->to + kStep_m, found->to);
    return found;
}

double chordLength(const Curtain& curtain, Vec3 from, Vec3 direction)
{
    const auto part = chord(curtain, from, direction);
    return part ? part->to - part->from : 0.0;
}

} // namespace

struct Ray {
    Curtain solid;
    Vec3 from;
    double elevation_deg, azimuth_deg, chord_m;
};
class Chords : public testing::TestWithParam<Ray> {};

const Curtain kBall{{0, 0, 5}, {0, 0, 5}, 3.0, 0.0};
const Curtain kUprightCapsule{{0, 0, 3}, {0, 0, 8}, 2.0, 0.0};
const Curtain kSlantingCapsule{{-2, 0, 4}, {3, 1, 6}, 1.5, 0.0};

// Closed form, worked outside this program and marched there in steps of 0.02 mm; receivers
// inside the ball among them.
INSTANTIATE_TEST_SUITE_P(Table, Chords,
                         testing::Values(Ray{kBall, {0, 6, 0}, 40, 180, 5.99977},
                                         Ray{kBall, {0, 4, 1.5}, 50, 180, 5.77468},
                                         Ray{kBall, {0, 0, 4}, 90, 0, 4.0},
                                         Ray{kBall, {1, 1, 4}, 35, 250, 4.56216},
                                         Ray{kUprightCapsule, {0, 6, 0}, 35, 180, 4.87174},
                                         Ray{kUprightCapsule, {0, 0, 0}, 90, 0, 9.0},
                                         Ray{kSlantingCapsule, {1, 5, 0}, 45, 185, 2.92649},
                                         Ray{kSlantingCapsule, {8, 2, 0}, 35, 260, 3.57802}));

TEST_P(Chords, AgreeWithTheTableToItsLastFigure)
{
    const auto& row = GetParam();
    EXPECT_NEAR(chordLength(row.solid, row.from, towards(row.elevation_deg, row.azimuth_deg)),
                row.chord_m, 0.00001);
}

// Brute force: random hanging curtains, random rays, from inside and outside, against a marcher
// that only knows the distance to the sheet. A chord shorter than its step may pass it by.
TEST(Chord, AgreesWithAMarcherForHangingCurtains)
{
    std::mt19937 random(20250621);
    std::uniform_real_distribution<double> unit(0.0, 1.0);
    const auto spread = [&](double low, double high) { return low + (high - low) * unit(random); };
    int met = 0;
    for (int i = 0; i < 300; ++i) {
        const Vec3 a{spread(-3, 3), spread(-3, 3), spread(3, 7)};
        const Curtain curtain{a, a + Vec3{spread(-3, 3), spread(-3, 3), spread(-2, 2)},
                              spread(0.2, 1.2), i % 5 == 0 ? 0.0 : spread(0.1, 3.0)};
        const Vec3 from{spread(-6, 6), spread(-6, 6), spread(0, 5)};
        const Vec3 aim =
            between(curtain.a, curtain.b, unit(random)) + Vec3{0.0, 0.0, spread(-3, 1)};
        if (norm(aim - from) < 0.1)
            continue;
        const Vec3 direction = (1.0 / norm(aim - from)) * (aim - from);
        const auto slow = marched(curtain, from, direction);
        const auto fast = chord(curtain, from, direction);
        if (!slow) {
            EXPECT_LT(fast ? fast->to - fast->from : 0.0, 0.041) << i;
            continue;
        }
        ++met;
        ASSERT_TRUE(fast) << i;
        OUTSIDE_NEAR(fast->from, slow->from, 1e-6) << i;
        OUTSIDE_NEAR(fast->to, slow->to, 1e-6) << i;
    }
    EXPECT_GT(met, 200);
}

// Law: rays along the sheet, straight up through it, and across it: the directions in which a
// formula would divide by nothing.
TEST(Chord, HoldsForRaysAlongTheSheet)
{
    const Curtain curtain{{-2, 0, 6}, {2, 0, 6}, 0.5, 3.0};
    EXPECT_NEAR(chordLength(curtain, {0, 0, 0}, {0, 0, 1}), 4.0, 1e-9);
    EXPECT_NEAR(chordLength(curtain, {-10, 0, 5}, {1, 0, 0}), 5.0, 1e-9);
    EXPECT_NEAR(chordLength(curtain, {0, -10, 5}, {0, 1, 0}), 1.0, 1e-9);
    EXPECT_NEAR(chordLength(curtain, {0, 0.3, 0}, {0, 0, 1}), 3.0 + 2.0 * 0.4, 1e-9);
    EXPECT_EQ(chordLength(curtain, {0, 0.6, 0}, {0, 0, 1}), 0.0);
}

// Law: what lies behind the receiver does not count.
TEST(Chord, StartsAtTheReceiver)
{
    EXPECT_FALSE(chord(kBall, {0, 0, 9}, {0, 0, 1}));
    const auto part = chord(kBall, {0, 0, 5}, {0, 0, 1});
    ASSERT_TRUE(part);
    EXPECT_EQ(part->from, 0.0);
    EXPECT_NEAR(part->to, 3.0, 1e-12);
}
