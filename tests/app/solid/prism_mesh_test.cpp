#include "app/solid/prism_mesh.hpp"
#include "app/solid/triangulated.hpp"
#include "tests/app/solid/closed.hpp"

#include <numbers>
#include <random>

namespace app {
namespace {

using model::Point2;
using model::Polygon;

/// A star about the origin: simple, whatever its points' distances.
Polygon star(unsigned seed, int points)
{
    std::mt19937 engine(seed);
    Polygon outline;
    for (int i = 0; i < points; ++i) {
        const double turn = 2.0 * std::numbers::pi * i / points;
        const double r = 0.3 + static_cast<double>(engine() % 1000) / 300.0;
        outline.push_back({r * std::cos(turn), r * std::sin(turn)});
    }
    return outline;
}

double area_m2(const Polygon& outline, const std::array<std::size_t, 3>& triangle)
{
    const Point2 a = outline[triangle[0]];
    const Point2 b = outline[triangle[1]];
    const Point2 c = outline[triangle[2]];
    return 0.5 * ((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
}

// Closed form: n - 2 triangles, none inside out, that have the polygon's area together; so none
// overlap and none lie outside.
TEST(Triangulated, FillsAnySimpleOutline)
{
    for (unsigned seed = 0; seed < 60; ++seed) {
        const auto outline = star(seed, 4 + static_cast<int>(seed % 20));
        const auto triangles = triangulated(outline);
        EXPECT_EQ(triangles.size(), outline.size() - 2);
        double all_m2 = 0.0;
        for (const auto& triangle : triangles) {
            EXPECT_GE(area_m2(outline, triangle), 0.0);
            all_m2 += area_m2(outline, triangle);
        }
        EXPECT_NEAR(all_m2, model::area_m2(outline), 1e-9);
    }
}

TEST(Triangulated, TakesCornersOnOneLine)
{
    const Polygon outline{{0, 0}, {1, 0}, {2, 0}, {2, 1}, {1, 1}, {0, 1}};
    double all_m2 = 0.0;
    for (const auto& triangle : triangulated(outline))
        all_m2 += area_m2(outline, triangle);
    EXPECT_NEAR(all_m2, 2.0, 1e-12);
}

// Closed form: area times height, upright or between two sloping planes alike.
TEST(PrismMesh, HoldsAreaTimesHeight)
{
    const Polygon angle{{0, 0}, {0, 3}, {1, 3}, {1, 1}, {4, 1}, {4, 0}}; // clockwise
    const auto level = prismMesh(
        angle, [](Point2) { return 0.5; }, [](Point2) { return 2.5; });
    EXPECT_NEAR(test::enclosed_m3(level), 6.0 * 2.0, 1e-9);
    test::expectClosed(level);
    test::expectOutwardNormals(level);

    const auto slope = [](Point2 at) { return 0.1 * at.x - 0.2 * at.y; };
    const auto sheet = prismMesh(angle, slope, [&](Point2 at) { return slope(at) + 0.25; });
    EXPECT_NEAR(test::enclosed_m3(sheet), 6.0 * 0.25, 1e-9);
    test::expectClosed(sheet);
    test::expectOutwardNormals(sheet);
}

TEST(Mesh, AppendingMovesAndKeepsBoth)
{
    const Polygon square{{0, 0}, {1, 0}, {1, 1}, {0, 1}};
    const auto cube = prismMesh(
        square, [](Point2) { return 0.0; }, [](Point2) { return 1.0; });
    Mesh two = cube;
    append(two, cube, {5.0, 0.0, 1.0});
    EXPECT_NEAR(test::enclosed_m3(two), 2.0, 1e-9);
    EXPECT_NEAR(test::surface_m2(two), 12.0, 1e-9);
    test::expectClosed(two);
}

} // namespace
} // namespace app
