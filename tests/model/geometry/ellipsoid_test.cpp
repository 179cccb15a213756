#include "model/geometry/angle.hpp"
#include "model/geometry/ellipsoid.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

using namespace model;

namespace {

Vec3 towards(double elevation_deg, double azimuth_deg)
{
    return std::cos(radians(elevation_deg)) * bearingDirection(azimuth_deg) +
           Vec3{0.0, 0.0, std::sin(radians(elevation_deg))};
}

double length(const Ellipsoid& e, Vec3 from, Vec3 direction)
{
    const auto inside = chord(e, from, direction);
    return inside ? inside->to - inside->from : 0.0;
}

/// Inside by the ellipsoid's own equation.
bool holds(const Ellipsoid& e, Vec3 p)
{
    const Vec3 off = p - e.middle_m;
    double sum = 0.0;
    for (const Vec3 axis : {e.a, e.b, e.c}) {
        const double share = dot(off, axis) / dot(axis, axis);
        sum += share * share;
    }
    return sum <= 1.0;
}

} // namespace

// Closed form, worked outside this program and marched there in steps of 0.02 mm. The second
// ellipsoid's axis of 3 m looks to 30 degrees.
TEST(EllipsoidChord, AgreesWithTheTableToItsLastFigure)
{
    const auto flat = uprightEllipsoid({0, 0, 6}, 90.0, 4.0, 3.0, 2.0);
    OUTSIDE_NEAR(length(flat, {2, 7, 0}, towards(38, 200)), 4.93434, 6e-6);
    const auto turned = uprightEllipsoid({0, 0, 6}, 30.0, 3.0, 4.0, 2.0);
    OUTSIDE_NEAR(length(turned, {2, 7, 0}, towards(38, 200)), 4.88098, 6e-6);
    const auto tall = uprightEllipsoid({0, 0, 5}, 0.0, 2.0, 2.0, 4.0);
    OUTSIDE_NEAR(length(tall, {-5, 1, 1}, towards(28, 100)), 4.15245, 6e-6);
    const auto ball = uprightEllipsoid({0, 0, 5}, 0.0, 3.0, 3.0, 3.0);
    OUTSIDE_NEAR(length(ball, {0, 4, 1.5}, towards(50, 180)), 5.77468, 6e-6);
    OUTSIDE_NEAR(length(ball, {1, 1, 4}, towards(35, 250)), 4.56216, 6e-6); // from inside
    OUTSIDE_NEAR(length(ball, {0, 0, 4}, {0, 0, 1}), 4.0, 1e-12);
}

// Brute force: random ellipsoids and rays against a marcher that only knows the equation.
TEST(EllipsoidChord, AgreesWithAMarcher)
{
    std::mt19937 draw(17);
    const auto between = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(draw()) / 4294967296.0;
    };
    constexpr double kStep_m = 0.002;
    int met = 0;
    for (int i = 0; i < 300; ++i) {
        const auto e =
            uprightEllipsoid({between(-2, 2), between(-2, 2), between(3, 7)}, between(0, 360),
                             between(0.5, 4), between(0.5, 4), between(0.5, 3));
        const Vec3 from{between(-5, 5), between(-5, 5), between(0, 5)};
        const Vec3 direction = towards(between(5, 90), between(0, 360));
        double marched = 0.0;
        for (double t = kStep_m / 2.0; t < 25.0; t += kStep_m)
            if (holds(e, from + t * direction))
                marched += kStep_m;
        OUTSIDE_NEAR(length(e, from, direction), marched, 1.01 * kStep_m) << i;
        met += marched > 0.0 ? 1 : 0;
    }
    EXPECT_GT(met, 40);
}

// Law: what lies behind the receiver does not count, and a ray that passes by meets nothing.
TEST(EllipsoidChord, StartsAtTheReceiver)
{
    const auto e = uprightEllipsoid({0, 0, 5}, 0.0, 1.0, 2.0, 3.0);
    EXPECT_FALSE(chord(e, {0, 0, 9}, {0, 0, 1}));
    EXPECT_FALSE(chord(e, {1.01, 2.01, 0}, {0, 0, 1}));
}

// Closed form.
TEST(Ellipsoid, HasItsVolumeAndItsAreaOnPlan)
{
    const auto e = uprightEllipsoid({1, 2, 5}, 25.0, 4.0, 3.0, 2.0);
    OUTSIDE_NEAR(volume_m3(e), 32.0 * std::numbers::pi, 1e-12);
    OUTSIDE_NEAR(area_m2(projected(e, {1, 0, 0}, {0, 1, 0})), 12.0 * std::numbers::pi, 1e-10);
    EXPECT_EQ(reach_m(e), 4.0);
}
