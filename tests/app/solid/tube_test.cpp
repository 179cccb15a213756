#include "app/solid/tube.hpp"
#include "tests/app/solid/closed.hpp"

#include <numbers>
#include <stdexcept>

namespace app {
namespace {

using test::enclosed_m3;

/// Area of a regular polygon in a circle of radius r.
double polygonArea_m2(int sides, double r)
{
    return 0.5 * sides * r * r * std::sin(2.0 * std::numbers::pi / sides);
}

// Closed form: volume of a frustum, h/3 (A1 + A2 + sqrt(A1 A2)).
TEST(Tube, AStraightTaperHoldsAFrustumOfItsPolygon)
{
    for (const int sides : {3, 8, 12}) {
        const std::vector<TubeRing> path{{{1.0, 2.0, 0.5}, 0.3}, {{2.0, 4.0, 2.5}, 0.1}};
        const auto mesh = tube(path, sides);
        const double a = polygonArea_m2(sides, 0.3);
        const double b = polygonArea_m2(sides, 0.1);
        EXPECT_NEAR(enclosed_m3(mesh), 3.0 / 3.0 * (a + b + std::sqrt(a * b)), 1e-9);
    }
}

TEST(Tube, IsClosedAndFacesOutwardsHoweverItBends)
{
    const std::vector<TubeRing> path{{{0, 0, 0}, 0.2},
                                     {{0, 0, 1}, 0.18},
                                     {{0.4, 0.1, 1.8}, 0.12},
                                     {{1.2, 0.6, 2.0}, 0.10},
                                     {{1.9, 0.2, 1.7}, 0.05}};
    const auto mesh = tube(path);
    test::expectClosed(mesh);
    test::expectOutwardNormals(mesh);
}

// Closed form: each piece of a bend lies between two rings that lean by half of its turn d towards
// each other. It has the chord's length, 2 R sin(d/2), and across it the ring's area times
// cos(d/2).
TEST(Tube, ABendHoldsItsSectionTimesItsLength)
{
    std::vector<TubeRing> path;
    constexpr int kPieces = 200;
    constexpr double kBend_m = 2.0;
    for (int i = 0; i <= kPieces; ++i) {
        const double turn = 2.0 * std::numbers::pi * i / kPieces;
        path.push_back({{kBend_m * std::cos(turn), 0.0, kBend_m * std::sin(turn)}, 0.1});
    }
    path.pop_back(); // not quite round to where it began
    const double piece = 2.0 * std::numbers::pi / kPieces;
    const double length_m = (kPieces - 1) * kBend_m * std::sin(piece);
    const double expected_m3 = polygonArea_m2(16, 0.1) * length_m;
    // The two ends are square to their pieces: each piece there is longer by a part in ten
    // thousand.
    EXPECT_NEAR(enclosed_m3(tube(path, 16)), expected_m3, 1e-5 * expected_m3);
}

TEST(Tube, DoesNotTwistOnAStraightPath)
{
    const std::vector<TubeRing> path{{{0, 0, 0}, 0.2}, {{0, 0, 1}, 0.2}, {{0, 0, 3}, 0.2}};
    const auto mesh = tube(path, 4);
    for (std::size_t side = 0; side < 4; ++side)
        for (const std::size_t ring : {1U, 2U})
            EXPECT_NEAR(norm(plan(mesh.places_m[4 * ring + side] - mesh.places_m[side])), 0.0,
                        1e-12);
}

TEST(Tube, RingsOnOnePlaceAreOneAndOneRingIsNothing)
{
    const std::vector<TubeRing> doubled{{{0, 0, 0}, 0.2}, {{0, 0, 0}, 0.2}, {{0, 0, 1}, 0.1}};
    const std::vector<TubeRing> once{{{0, 0, 0}, 0.2}, {{0, 0, 1}, 0.1}};
    EXPECT_EQ(tube(doubled), tube(once));
    EXPECT_TRUE(tube(std::vector<TubeRing>{{{0, 0, 0}, 0.2}}).triangles.empty());
    EXPECT_TRUE(tube({}).triangles.empty());
}

TEST(Tube, RefusesWhatIsNoTube)
{
    const std::vector<TubeRing> flat{{{0, 0, 0}, 0.2}, {{0, 0, 1}, 0.0}};
    EXPECT_THROW((void)tube(flat), std::domain_error);
    const std::vector<TubeRing> path{{{0, 0, 0}, 0.2}, {{0, 0, 1}, 0.1}};
    EXPECT_THROW((void)tube(path, 2), std::domain_error);
}

} // namespace
} // namespace app
