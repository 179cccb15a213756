#include "model/crown/flat_curtain.hpp"
#include "model/crown/silhouette.hpp"
#include "model/geometry/angle.hpp"
#include "model/geometry/polygon.hpp"
#include "tests/model/load/samples.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace model::load {
namespace {

/// A curtain seen along a level direction, as a polygon of many corners.
Polygon outline(const Curtain& curtain, Vec3 across)
{
    constexpr int kSteps = 96;
    std::vector<Point2> points;
    for (const auto& corner : corners(curtain))
        for (int i = 0; i < kSteps; ++i) {
            const double angle = 2.0 * std::numbers::pi * i / kSteps;
            points.push_back({dot(corner, across) + curtain.radius_m * std::cos(angle),
                              corner.z + curtain.radius_m * std::sin(angle)});
        }
    return convexHull(points);
}

/// The outline of some limbs' leafy bodies together, by Boost.Geometry, m2.
double united_m2(const std::vector<LeafyBody>& bodies, const std::vector<std::size_t>& limbs,
                 Vec3 across)
{
    std::vector<Polygon> shapes;
    for (const auto& body : bodies)
        if (std::ranges::find(limbs, body.limb) != limbs.end())
            shapes.push_back(outline(body.solid, across));
    return area_m2(unite(shapes));
}

Vec3 acrossOf(double bearing)
{
    const Vec3 along = bearingDirection(bearing);
    return {-along.y, along.x, 0.0};
}

/// Largest error over limbs and bearings, as a share of Boost's area.
double largestError(const Tree& tree, int lines, bool crownOnly)
{
    const auto order = limbOrder(tree);
    const auto bodies = leafyBodies(tree);
    const std::vector bearings{0.0, 40.0, 110.0};
    const Silhouettes silhouettes(tree, order, bodies, bearings, lines);
    double worst = 0.0;
    for (std::size_t b = 0; b < bearings.size(); ++b) {
        for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
            if (crownOnly && i != order.trunk)
                continue;
            const double exact = united_m2(bodies, limbAndBeyond(order, i), acrossOf(bearings[b]));
            const double ours = silhouettes.visible(i, order.children[i].size(), b).leaf_m2;
            worst = std::max(worst, std::abs(ours / exact - 1.0));
        }
    }
    return worst;
}

// Outside: unions of polygons by Boost.Geometry 1.74.
TEST(Silhouette, OfTheCrownAgreesWithUnitedPolygons)
{
    for (const unsigned seed : {1U, 2U, 3U}) {
        OUTSIDE_NEAR(largestError(spreading(seed, 6, 4), 0, true), 0.0, 0.02) << seed;
        OUTSIDE_NEAR(largestError(spreading(seed, 6, 4, 1.2), 0, true), 0.0, 0.02) << seed;
    }
}

TEST(Silhouette, OfEveryLimbAgreesWithUnitedPolygons)
{
    for (const unsigned seed : {1U, 2U, 3U})
        OUTSIDE_NEAR(largestError(spreading(seed, 6, 4), 0, false), 0.0, 0.03) << seed;
}

TEST(Silhouette, OfALoneStraightLimbIsExact)
{
    const auto tree =
        cantilever(leafy(straight("a", {0, 0, 3}, {3, 1, 4}, 0.1, 0.05), 0.5, 0.7, 1.0));
    const auto order = limbOrder(tree);
    const auto bodies = leafyBodies(tree);
    const std::vector bearings{0.0, 30.0, 75.0, 160.0};
    const Silhouettes silhouettes(tree, order, bodies, bearings);
    for (std::size_t b = 0; b < bearings.size(); ++b)
        EXPECT_NEAR(silhouettes.visible(0, 0, b).leaf_m2,
                    frontalArea_m2(bodies.front().solid, bearingDirection(bearings[b])), 1e-9);
}

// Law: more outer limbs never show less.
TEST(Silhouette, GrowsWithEachLimbAdded)
{
    const auto tree = spreading(7, 8, 5);
    const auto order = limbOrder(tree);
    const auto bodies = leafyBodies(tree);
    const Silhouettes silhouettes(tree, order, bodies, {70.0});
    for (std::size_t n = 0; n < order.children[order.trunk].size(); ++n)
        EXPECT_GE(silhouettes.visible(order.trunk, n + 1).leaf_m2,
                  silhouettes.visible(order.trunk, n).leaf_m2 * 0.999);
}

// Closed form: wood half covered by a leafy body in front of it shows the other half; round ends
// add pi/2 x 0.1 m to the 8 m of the post. 400 lines are 0.02 m apart.
TEST(Silhouette, LeavesHideTheWoodBehindThem)
{
    Tree tree = cantilever(straight("post", {0, 0, 0}, {0, 0, 8}, 0.2, 0.2));
    tree.limbs.push_back(growing(
        leafy(straight("cloud", {0, 0, 4}, {0, 0.001, 4}, 0.1, 0.1), 0.0, 2.0), "post", 4.0));
    const auto order = limbOrder(tree);
    const auto bodies = leafyBodies(tree);
    const Silhouettes silhouettes(tree, order, bodies, {0.0}, 400);
    OUTSIDE_NEAR(silhouettes.visible(0, 0).woodShare, 1.0, 1e-12);
    OUTSIDE_NEAR(silhouettes.visible(0, 1).woodShare, 4.157 / 8.157, 0.002);
}

// Brute force: the stretch by closed form against the outline tested point by point.
TEST(FlatCurtain, AgreesWithPointsTestedOneByOne)
{
    const std::vector<Curtain> shapes{{{0, 0, 2}, {2, 1, 3}, 0.5, 0.0},
                                      {{0, 0, 3}, {2, 1, 2.2}, 0.4, 1.1},
                                      {{0, 0, 2}, {0, 0, 4}, 0.6, 0.5},
                                      {{1, 1, 2}, {3, -1, 2}, 0.3, 0.8},
                                      {{1, 1, 2}, {1.05, 1, 3.5}, 0.3, 0.2}};
    const Vec3 across = acrossOf(25.0);
    for (const auto& shape : shapes) {
        const auto polygon = outline(shape, across);
        for (double z = 0.0; z < 5.0; z += 0.0917) {
            double low = 1e9;
            double high = -1e9;
            for (double u = -6.0; u < 6.0; u += 0.004)
                if (covers(polygon, {u, z})) {
                    low = std::min(low, u);
                    high = std::max(high, u);
                }
            const auto stretch = FlatCurtain(shape, across).covered(z);
            if (!stretch) {
                EXPECT_LE(high - low, 0.05) << z;
                continue;
            }
            // The polygon's 96 corners lie on the circle, its edges up to 0.05 % of r inside.
            const double round = stretch->to - stretch->from < 0.1 ? 0.05 : 0.008;
            OUTSIDE_NEAR(stretch->from, low, round) << z;
            OUTSIDE_NEAR(stretch->to, high, round) << z;
        }
    }
}

} // namespace
} // namespace model::load
