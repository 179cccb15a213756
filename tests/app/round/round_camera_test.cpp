#include "app/round/round_camera.hpp"

#include <gtest/gtest.h>

#include <QRectF>

#include <cmath>

namespace app {
namespace {

RoundCamera camera()
{
    RoundCamera camera;
    camera.bearing_deg = 30.0;
    camera.down_deg = 20.0;
    camera.distance_m = 12.0;
    camera.target_m = {4.0, 6.0, 2.5};
    return camera;
}

TEST(RoundCamera, StandsSouthToLookNorthAndLooksDownFromAbove)
{
    RoundCamera level;
    level.bearing_deg = 0.0;
    level.down_deg = 0.0;
    level.distance_m = 10.0;
    EXPECT_NEAR(level.eye_m().y, -10.0, 1e-12);
    EXPECT_NEAR(level.right().x, 1.0, 1e-12);
    EXPECT_NEAR(level.up().z, 1.0, 1e-12);
    level.down_deg = 30.0;
    EXPECT_NEAR(level.eye_m().z, 5.0, 1e-12);
}

TEST(RoundCamera, ThePlaceLookedAtIsInTheMiddle)
{
    const auto at = camera().toCanvas(camera().target_m);
    ASSERT_TRUE(at);
    EXPECT_NEAR(at->x(), 400.0, 1e-9);
    EXPECT_NEAR(at->y(), 250.0, 1e-9);
}

// Law: what is drawn at a point lies on the look through that point.
TEST(RoundCamera, ASightGoesThroughWhatIsDrawnThere)
{
    for (const auto place : {model::Vec3{4, 6, 0}, {1, 9, 5}, {8, 2, 3}, {4, 20, 1}}) {
        const auto at = camera().toCanvas(place);
        ASSERT_TRUE(at);
        const auto sight = camera().sight(*at);
        const auto off = place - sight.from_m;
        EXPECT_NEAR(norm(cross(off, sight.direction)), 0.0, 1e-9);
        EXPECT_GT(dot(off, sight.direction), 0.0);
    }
}

TEST(RoundCamera, WhatLiesBehindIsNotDrawn)
{
    EXPECT_FALSE(camera().toCanvas(camera().eye_m() - 2.0 * camera().look()));
}

// Closed form: a ball of radius r seen from d fills the view's half angle when sin = r / d.
TEST(RoundCamera, FittedHasTheWholeBallInThePictureFromEverySide)
{
    for (const QSizeF canvas : {QSizeF(900, 400), QSizeF(300, 600)}) {
        auto looking = camera();
        looking.canvas = canvas;
        const model::Vec3 middle{1, 2, 3};
        const double radius = 4.0;
        looking = fitted(looking, middle, radius);
        for (int turn = 0; turn < 360; turn += 30) {
            looking.bearing_deg = turn;
            for (int i = 0; i < 200; ++i) { // a spiral of places on the ball
                const double z = -1.0 + 2.0 * (i + 0.5) / 200.0;
                const double level = std::sqrt(1.0 - z * z);
                const auto at =
                    looking.toCanvas(middle + radius * model::Vec3{level * std::cos(2.4 * i),
                                                                   level * std::sin(2.4 * i), z});
                ASSERT_TRUE(at);
                EXPECT_TRUE(QRectF(QPointF(0, 0), canvas).contains(*at));
            }
        }
    }
}

TEST(RoundCamera, APixelMeasuresTheSameAsTwoPlacesAPixelApart)
{
    const auto looking = camera();
    const auto at = looking.toCanvas(looking.target_m + looking.metresPerPixel() * looking.right());
    ASSERT_TRUE(at);
    EXPECT_NEAR(at->x(), 401.0, 1e-9);
}

} // namespace
} // namespace app
