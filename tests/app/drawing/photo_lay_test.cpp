#include "app/drawing/photo_lay.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace app {
namespace {

constexpr QSizeF kPicture(4000.0, 3000.0);
constexpr double kDegree = std::numbers::pi / 180.0;

/// Pixel at which a camera sees a place, by turning the place into the camera's own axes: right,
/// down, away. The camera looks up by `tilt_deg` and is rolled by `roll_deg` anticlockwise.
QPointF seen(double right_m, double up_m, double away_m, double tilt_deg, double roll_deg = 0.0)
{
    const double c = std::cos(tilt_deg * kDegree);
    const double s = std::sin(tilt_deg * kDegree);
    const double down = -up_m * c + away_m * s;
    const double away = up_m * s + away_m * c;
    const double f = focal_px(kPicture);
    const QPointF level(f * right_m / away, f * down / away);
    const double r = roll_deg * kDegree;
    return QPointF(level.x() * std::cos(r) - level.y() * std::sin(r),
                   level.x() * std::sin(r) + level.y() * std::cos(r)) +
           QPointF(kPicture.width() / 2.0, kPicture.height() / 2.0);
}

} // namespace

// Closed form: a 28 mm lens sees 65.5 degrees of a 36 mm wide picture of the same diagonal.
TEST(PhotoLay, TakesATelephonesLens)
{
    const double half = std::atan(18.0 / 28.0);
    OUTSIDE_NEAR(std::atan(1500.0 * 1.5 / focal_px({4500.0, 3000.0})), half, 1e-12);
}

// Brute force: the edge of a wall 12 m off, seen by a camera that looks up, gives the tilt back.
TEST(PhotoLay, FindsTheTiltFromTheEdgeOfAWall)
{
    for (const double tilt : {-20.0, 5.0, 18.0, 35.0})
        for (const double right : {-4.0, 3.0, 6.0}) {
            const auto lay = uprightBy({}, seen(right, -1.0, 12.0, tilt),
                                       seen(right, 5.0, 12.0, tilt), kPicture);
            ASSERT_TRUE(lay) << tilt;
            OUTSIDE_NEAR(lay->tilt_deg, tilt, 1e-9);
            EXPECT_EQ(lay->turned_deg, 0.0);
        }
}

TEST(PhotoLay, TurnsThePictureByAnEdgeInItsMiddle)
{
    for (const double roll : {-12.0, 3.0, 30.0}) {
        const auto lay = uprightBy({}, seen(0.0, -1.5, 12.0, 0.0, roll),
                                   seen(0.0, 2.0, 12.0, 0.0, roll), kPicture);
        ASSERT_TRUE(lay);
        EXPECT_NEAR(lay->turned_deg, -roll, 1e-9);
        EXPECT_EQ(lay->tilt_deg, 0.0);
    }
}

// Law: once straightened, what lies in one upright plane is to one scale, upwards and across.
TEST(PhotoLay, DrawsAnUprightPlaneToOneScale)
{
    model::Underlay lay;
    lay.tilt_deg = 25.0;
    const auto scale =
        scaleBy(lay, seen(2.0, 0.0, 10.0, 25.0), seen(2.0, 2.0, 10.0, 25.0), 2.0, kPicture);
    ASSERT_TRUE(scale);
    EXPECT_NEAR(*scale, 10.0 / focal_px(kPicture), 1e-12);
    const auto across =
        scaleBy(lay, seen(-3.0, 6.0, 10.0, 25.0), seen(1.0, 6.0, 10.0, 25.0), 4.0, kPicture);
    EXPECT_NEAR(*across, *scale, 1e-12);
}

TEST(PhotoLay, PutsThePixelOfTheFootOnTheFootOfTheTree)
{
    model::Photo photo;
    photo.metresPerPixel = 0.004;
    photo.underlay.emplace();
    photo.underlay->tilt_deg = 10.0;
    const QPointF stem = seen(0.5, -1.6, 9.0, 10.0);
    const QPointF foot = straightening(*photo.underlay, kPicture).map(stem);
    photo.underlay->foot_px = {foot.x(), foot.y()};
    const SideFrame frame{0.0, 50.0, QPointF(400.0, 300.0)};
    EXPECT_LT(
        QPointF(photoToCanvas(photo, kPicture, frame).map(stem) - frame.foot).manhattanLength(),
        1e-9);
    auto turned = *photo.underlay;
    turned.turned_deg = 7.0;
    photo.underlay = keepingFoot(*photo.underlay, turned, kPicture);
    EXPECT_LT(
        QPointF(photoToCanvas(photo, kPicture, frame).map(stem) - frame.foot).manhattanLength(),
        1e-9);
}

TEST(PhotoLay, LeavesBeWhatTellsNothing)
{
    EXPECT_FALSE(uprightBy({}, {10.0, 10.0}, {10.0, 10.0}, kPicture));
    EXPECT_FALSE(uprightBy({}, {3000.0, 1500.0}, {3900.0, 1500.0}, kPicture)); // a level edge
    EXPECT_FALSE(scaleBy({}, {10.0, 10.0}, {10.0, 10.0}, 1.0, kPicture));
}

} // namespace app
