#include "model/geometry/angle.hpp"
#include "model/geometry/curtain.hpp"
#include "tests/model/geometry/slow_distance.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

using namespace model;

namespace {

constexpr double kPi = std::numbers::pi;

class Picker {
public:
    explicit Picker(unsigned seed) : engine_(seed) {}
    double operator()(double low, double high)
    {
        return low + (high - low) * static_cast<double>(engine_()) / 4294967296.0;
    }
    Vec3 place() { return {(*this)(-3, 3), (*this)(-3, 3), (*this)(2, 6)}; }
    Curtain curtain(int kind) // capsules, spheres, upright ones and curtains in turn
    {
        Curtain made{place(), place(), (*this)(0.1, 1.5), (*this)(0, 3)};
        if (kind % 4 == 1)
            made.hang_m = 0.0;
        if (kind % 4 == 2)
            made.b = made.a;
        if (kind % 4 == 3)
            made.b = {made.a.x, made.a.y, made.b.z};
        return made;
    }

private:
    std::mt19937 engine_;
};

} // namespace

// Closed form: a sphere, a capsule, a level curtain (a box, four half cylinders, four quarter
// spheres) and a leaning one (Cavalieri: its parallelogram keeps level run x hang).
TEST(CurtainVolume, AgreesWithClosedForms)
{
    OUTSIDE_NEAR(volume_m3({{1, 2, 3}, {1, 2, 3}, 2.0, 0.0}), 4.0 / 3.0 * kPi * 8.0, 1e-12);
    OUTSIDE_NEAR(volume_m3({{0, 0, 3}, {0, 3, 7}, 0.5, 0.0}),
                 kPi * 0.25 * 5.0 + 4.0 / 3.0 * kPi * 0.125, 1e-12);
    const double rim = kPi / 2.0 * 0.25; // half of a cylinder's section
    OUTSIDE_NEAR(volume_m3({{0, 0, 5}, {4, 0, 5}, 0.5, 2.0}),
                 4.0 * 2.0 * 1.0 + rim * 12.0 + 4.0 / 3.0 * kPi * 0.125, 1e-12);
    OUTSIDE_NEAR(volume_m3({{0, 0, 5}, {4, 0, 8}, 0.5, 2.0}),
                 4.0 * 2.0 * 1.0 + rim * 14.0 + 4.0 / 3.0 * kPi * 0.125, 1e-12);
    OUTSIDE_NEAR(volume_m3({{0, 0, 5}, {0, 0, 5}, 0.5, 2.0}), // an upright capsule
                 kPi * 0.25 * 2.0 + 4.0 / 3.0 * kPi * 0.125, 1e-12);
}

// Brute force: share of random points in a box that lie within the radius of the sheet.
TEST(CurtainVolume, AgreesWithMonteCarlo)
{
    Picker pick(3);
    constexpr int kPoints = 40000;
    for (int kind = 0; kind < 12; ++kind) {
        const auto curtain = pick.curtain(kind);
        const auto corner = corners(curtain);
        Vec3 low = corner[0];
        Vec3 high = corner[0];
        for (const auto& c : corner) {
            low = {std::min(low.x, c.x), std::min(low.y, c.y), std::min(low.z, c.z)};
            high = {std::max(high.x, c.x), std::max(high.y, c.y), std::max(high.z, c.z)};
        }
        const double r = curtain.radius_m;
        const Vec3 size = high - low + Vec3{2 * r, 2 * r, 2 * r};
        int hits = 0;
        Vec3 sum{};
        for (int i = 0; i < kPoints; ++i) {
            const Vec3 p{low.x - r + pick(0, size.x), low.y - r + pick(0, size.y),
                         low.z - r + pick(0, size.z)};
            if (distanceToSheet(curtain, p) > r)
                continue;
            ++hits;
            sum += p;
        }
        const double share = static_cast<double>(hits) / kPoints;
        const double box = size.x * size.y * size.z;
        const double sigma = box * std::sqrt(share * (1.0 - share) / kPoints);
        OUTSIDE_NEAR(volume_m3(curtain), box * share, 4.0 * sigma) << kind;
        // The mean of n points of a shape of size s strays by less than s / sqrt(n).
        const Vec3 off = (1.0 / hits) * sum - centre(curtain);
        EXPECT_LT(norm(off), 3.0 * norm(size) / std::sqrt(hits)) << kind;
    }
}

// Brute force: going up a plumb line in fine steps, the first point inside.
TEST(UndersideHeight, AgreesWithASearchUpAPlumbLine)
{
    Picker pick(4);
    int met = 0;
    for (int kind = 0; kind < 400; ++kind) {
        const auto curtain = pick.curtain(kind);
        const Point2 at = kind % 2 == 0 ? plan(centre(curtain)) + Point2{pick(-1, 1), pick(-1, 1)}
                                        : Point2{pick(-4, 4), pick(-4, 4)};
        std::optional<double> found;
        double bottom = lowestPoint(curtain).z - 0.1;
        const double top = std::max(curtain.a.z, curtain.b.z) + curtain.radius_m;
        for (double z = bottom; z < top && !found; z += 0.01)
            if (distanceToSheet(curtain, {at.x, at.y, z}) <= curtain.radius_m)
                found = z;
        const auto height = undersideHeight_m(curtain, at);
        if (!found) { // steps of 1 cm pass over what is thinner, near the rim
            if (height) {
                EXPECT_GT(distanceToSheet(curtain, {at.x, at.y, *height + 0.02}),
                          curtain.radius_m - 0.02);
            }
            continue;
        }
        ++met;
        ASSERT_TRUE(height) << kind;
        EXPECT_LE(*height, *found + 1e-9) << kind;
        EXPECT_GT(*height, *found - 0.0101) << kind;
        OUTSIDE_NEAR(distanceToSheet(curtain, {at.x, at.y, *height}), curtain.radius_m, 1e-6)
            << kind;
    }
    EXPECT_GE(met, 100);
}

TEST(LowestPoint, IsOnTheCurtainAndNothingOfItIsLower)
{
    Picker pick(5);
    for (int kind = 0; kind < 200; ++kind) {
        const auto curtain = pick.curtain(kind);
        const auto lowest = lowestPoint(curtain);
        EXPECT_NEAR(distanceToSheet(curtain, lowest), curtain.radius_m, 1e-6) << kind;
        const Point2 at{pick(-4, 4), pick(-4, 4)};
        EXPECT_GE(undersideHeight_m(curtain, at).value_or(lowest.z), lowest.z - 1e-12) << kind;
    }
}

// Closed form: a stadium, 2 r L + pi r^2, L the level run.
TEST(Footprint, HasTheAreaOfTheStadiumForAnyCornerCount)
{
    Picker pick(6);
    for (int kind = 0; kind < 100; ++kind) {
        const auto curtain = pick.curtain(kind);
        const double run = norm(plan(curtain.b) - plan(curtain.a));
        const double r = curtain.radius_m;
        for (const int steps : {1, 2, 6, 20}) {
            const auto outline = footprint(curtain, steps);
            OUTSIDE_NEAR(area_m2(outline), 2.0 * r * run + kPi * r * r, 1e-9) << kind;
            EXPECT_FALSE(polygonFault(outline)) << kind;
        }
    }
}

TEST(Footprint, FollowsTheTrueOutlineWithinAHundredthOfTheRadius)
{
    Picker pick(7);
    for (int kind = 0; kind < 40; ++kind) {
        const auto curtain = pick.curtain(kind);
        for (const auto corner : footprint(curtain)) {
            Curtain flat = curtain;
            flat.a.z = flat.b.z = 0.0;
            flat.hang_m = 0.0;
            const double off = distanceToSheet(flat, {corner.x, corner.y, 0.0});
            EXPECT_NEAR(off, curtain.radius_m, 0.01 * curtain.radius_m) << kind;
        }
    }
}

// Brute force: points all over the surface thrown on a wall, and the area of their convex hull.
TEST(FrontalArea, AgreesWithTheHullOfThrownPoints)
{
    Picker pick(8);
    for (int kind = 0; kind < 24; ++kind) {
        const auto curtain = pick.curtain(kind);
        const Vec3 wind = bearingDirection(pick(0, 360));
        const Vec3 across = bearingDirection(degrees(std::atan2(wind.x, wind.y)) + 90.0);
        std::vector<Point2> thrown;
        for (const auto& corner : corners(curtain))
            for (int i = 0; i < 720; ++i) {
                const double turn = kPi * i / 360.0;
                thrown.push_back(Point2{dot(corner, across), corner.z} +
                                 curtain.radius_m * Point2{std::cos(turn), std::sin(turn)});
            }
        const double hull = area_m2(convexHull(thrown));
        OUTSIDE_NEAR(frontalArea_m2(curtain, wind), hull, 1e-4 * hull) << kind;
    }
}

// Closed form: a level limb, 4 m long, of radius 0.5 with shoots of 2 m.
TEST(FrontalArea, IsSideOnABoxWithRoundCornersAndEndOnACapsule)
{
    const Curtain curtain{{0, 0, 5}, {4, 0, 5}, 0.5, 2.0};
    OUTSIDE_NEAR(frontalArea_m2(curtain, {0, 1, 0}), 4.0 * 2.0 + 12.0 * 0.5 + kPi * 0.25, 1e-12);
    OUTSIDE_NEAR(frontalArea_m2(curtain, {1, 0, 0}), 2.0 * 2.0 * 0.5 + kPi * 0.25, 1e-12);
}
