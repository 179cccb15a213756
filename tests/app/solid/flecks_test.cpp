#include "app/solid/flecks.hpp"
#include "tests/app/solid/closed.hpp"

#include <numbers>
#include <stdexcept>

namespace app {
namespace {

using model::Curtain;
using model::Vec3;

/// Whether a straight line upwards from a place on plan meets a triangle.
bool meets(const Mesh& mesh, const Mesh::Triangle& triangle, double x, double y)
{
    int signs = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        const Vec3 a = mesh.places_m[triangle[i]];
        const Vec3 b = mesh.places_m[triangle[(i + 1) % 3]];
        signs += (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x) >= 0.0 ? 1 : -1;
    }
    return signs == 3; // the faces that look down are the same leaves again
}

// Closed form: both faces of every fleck, as many flecks as make up the leaf.
TEST(Flecks, HaveTheLeafsAreaOnEachFace)
{
    const Curtain body{{0, 0, 3}, {2, 1, 4}, 0.5, 1.5};
    const auto mesh = flecks(body, {12.0, 0.05, 7});
    EXPECT_EQ(mesh.triangles.size(), 4U * 240U);
    EXPECT_NEAR(test::surface_m2(mesh), 2.0 * 12.0, 1e-9);
    EXPECT_TRUE(flecks(body, {0.0, 0.05, 7}).triangles.empty());
}

TEST(Flecks, LieInTheBody)
{
    const Curtain body{{0, 0, 3}, {2, 1, 4}, 0.5, 1.5};
    const auto mesh = flecks(body, {6.0, 0.02, 7});
    for (std::size_t i = 0; i + 3 < mesh.places_m.size(); i += 4) {
        const Vec3 middle = 0.5 * (mesh.places_m[i] + mesh.places_m[i + 2]);
        const auto inside = chord(body, {middle.x, middle.y, -1.0}, {0.0, 0.0, 1.0});
        ASSERT_TRUE(inside);
        EXPECT_GE(middle.z + 1.0, inside->from - 1e-9);
        EXPECT_LE(middle.z + 1.0, inside->to + 1e-9);
    }
}

// Published: Beer and Lambert's law with G = 1/2 for leaves that lean every way alike (Ross 1981,
// recalled): through the middle of a ball of radius 1 m with 1.2 m2 of leaf per m3 the share of
// light that passes is exp(-0.5 * 1.2 * 2) = 0.30. Of 900 lines, which share flecks with their
// neighbours, chance alone moves it by some 0.03.
TEST(Flecks, LetThroughWhatBeerAndLambertSay)
{
    const Curtain ball{{0, 0, 5}, {0, 0, 5}, 1.0, 0.0};
    const double density_1_m = 1.2;
    const auto mesh = flecks(ball, {density_1_m * volume_m3(ball), 0.002, 3});
    int passed = 0;
    int lines = 0;
    double expected = 0.0;
    for (double x = -0.29; x < 0.3; x += 0.02)
        for (double y = -0.29; y < 0.3; y += 0.02) {
            ++lines;
            bool free = true;
            for (const auto& triangle : mesh.triangles)
                free = free && !meets(mesh, triangle, x, y);
            passed += free ? 1 : 0;
            const double path_m = 2.0 * std::sqrt(1.0 - x * x - y * y);
            expected += std::exp(-0.5 * density_1_m * path_m);
        }
    EXPECT_NEAR(static_cast<double>(passed) / lines, expected / lines, 0.045);
}

TEST(Flecks, AreStrewnAlikeEachTimeAndOtherwiseForAnotherSeed)
{
    const Curtain ball{{0, 0, 5}, {0, 0, 5}, 1.0, 0.0};
    EXPECT_EQ(flecks(ball, {1.0, 0.05, 3}), flecks(ball, {1.0, 0.05, 3}));
    EXPECT_NE(flecks(ball, {1.0, 0.05, 3}), flecks(ball, {1.0, 0.05, 4}));
}

TEST(Flecks, RefusesAreasThatCanNotBe)
{
    const Curtain ball{{0, 0, 5}, {0, 0, 5}, 1.0, 0.0};
    EXPECT_THROW((void)flecks(ball, {1.0, 0.0, 3}), std::domain_error);
    EXPECT_THROW((void)flecks(ball, {-1.0, 0.05, 3}), std::domain_error);
}

} // namespace
} // namespace app
