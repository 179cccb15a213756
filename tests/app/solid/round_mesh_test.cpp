#include "app/solid/round_mesh.hpp"
#include "tests/app/solid/closed.hpp"

#include <numbers>
#include <stdexcept>

namespace app {
namespace {

using model::Curtain;

const std::vector<Curtain>& bodies()
{
    static const std::vector<Curtain> kBodies{
        {{1, 2, 3}, {1, 2, 3}, 0.7, 0.0},     // ball
        {{0, 0, 2}, {1.5, 0.5, 3}, 0.6, 0.0}, // capsule
        {{0, 0, 2}, {0, 0, 4}, 0.5, 0.0},     // upright capsule
        {{0, 0, 4}, {0, 0, 2}, 0.5, 1.2},     // the same with shoots
        {{0, 0, 3}, {0, 0, 3}, 0.4, 2.0},     // ball with shoots
        {{0, 0, 3}, {2, 1, 4}, 0.5, 1.5},     // curtain
        {{0, 0, 3}, {2, 1, 1.5}, 0.5, 0.8},   // curtain that slopes down
    };
    return kBodies;
}

TEST(RoundMesh, IsClosedAndFacesOutwards)
{
    for (const auto& body : bodies()) {
        const auto mesh = roundMesh(body);
        test::expectClosed(mesh);
        test::expectOutwardNormals(mesh);
    }
}

// Closed form: Steiner's formula (model/geometry/curtain.hpp). A mesh whose places lie on the
// surface lacks a share that goes with the square of its steps: four times the steps, a sixteenth.
TEST(RoundMesh, HoldsTheBodysVolumeAsTheStepsBecomeFine)
{
    for (const auto& body : bodies()) {
        const double whole = volume_m3(body);
        const double coarse = whole - test::enclosed_m3(roundMesh(body, 4));
        const double fine = whole - test::enclosed_m3(roundMesh(body, 16));
        EXPECT_GT(coarse, 0.0);           // it lies within a convex body
        EXPECT_LT(coarse, 0.065 * whole); // a ball's, the roundest of them, lacks 6.3 %
        EXPECT_NEAR(fine / coarse, 1.0 / 16.0, 0.004);
    }
}

TEST(RoundMesh, EachPlaceLiesOnTheSurface)
{
    for (const auto& body : bodies()) {
        const auto mesh = roundMesh(body);
        for (std::size_t i = 0; i < mesh.places_m.size(); ++i) {
            const auto outside = mesh.places_m[i] + 0.01 * mesh.normals[i];
            const auto through = chord(body, outside, -1.0 * mesh.normals[i]);
            ASSERT_TRUE(through);
            EXPECT_NEAR(through->from, 0.01, 1e-6);
        }
    }
}

// Closed form: 4/3 pi a b c.
TEST(RoundMesh, AnEllipsoidHoldsItsVolumeEitherWayRound)
{
    const model::Ellipsoid upright = model::uprightEllipsoid({3, 4, 5}, 30.0, 2.0, 1.0, 3.0);
    const model::Ellipsoid mirrored{{0, 0, 0}, {0, 2, 0}, {1, 0, 0}, {0, 0, 3}};
    for (const auto& body : {upright, mirrored}) {
        const auto mesh = roundMesh(body, 16);
        test::expectClosed(mesh);
        test::expectOutwardNormals(mesh);
        EXPECT_NEAR(test::enclosed_m3(mesh), volume_m3(body), 0.01 * volume_m3(body));
    }
}

TEST(RoundMesh, RefusesABodyWithoutRadius)
{
    EXPECT_THROW((void)roundMesh(Curtain{{}, {1, 0, 0}, 0.0, 0.0}), std::domain_error);
    EXPECT_THROW((void)roundMesh(Curtain{{}, {1, 0, 0}, 1.0, 0.0}, 0), std::domain_error);
}

} // namespace
} // namespace app
