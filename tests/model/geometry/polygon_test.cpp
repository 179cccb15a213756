#include "model/geometry/polygon.hpp"
#include "tests/outside/outside_check.hpp"

#include "model/geometry/segment.hpp"
#include "model/geometry/simplify.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

using namespace model;

namespace {

Polygon box(double west, double south, double east, double north)
{
    return {{west, south}, {east, south}, {east, north}, {west, north}};
}

class Picker {
public:
    explicit Picker(unsigned seed) : engine_(seed) {}
    double operator()(double low, double high)
    {
        return low + (high - low) * static_cast<double>(engine_()) / 4294967296.0;
    }

private:
    std::mt19937 engine_;
};

/// A regular polygon of many corners, as good as a circle to 1e-5 of its area.
Polygon circle(Point2 middle, double radius)
{
    Polygon made;
    for (int i = 0; i < 720; ++i) {
        const double turn = std::numbers::pi * i / 360.0;
        made.push_back(middle + radius * Point2{std::cos(turn), std::sin(turn)});
    }
    return made;
}

std::string faultOf(const Polygon& outline)
{
    return polygonFault(outline).value_or("none");
}

} // namespace

TEST(PolygonFault, AcceptsPlainOutlinesEitherWayRound)
{
    auto outline = box(0, 0, 3, 2);
    EXPECT_EQ(faultOf(outline), "none");
    std::ranges::reverse(outline);
    EXPECT_EQ(faultOf(outline), "none");
    EXPECT_EQ(faultOf({{0, 0}, {4, 0}, {4, 4}, {2, 1}, {0, 4}}), "none"); // hollow
    EXPECT_EQ(faultOf({{0, 0}, {2, 0}, {4, 0}, {4, 4}}), "none");         // a corner on an edge
}

TEST(PolygonFault, SaysWhatIsWrong)
{
    EXPECT_EQ(faultOf({}), "needs at least three corners");
    EXPECT_EQ(faultOf({{0, 0}, {1, 0}}), "needs at least three corners");
    EXPECT_EQ(faultOf({{0, 0}, {1, 0}, {2, 0}}), "is thinner than a millimetre");
    EXPECT_EQ(faultOf({{1, 1}, {1, 1}, {1, 1}}), "is thinner than a millimetre");
    EXPECT_EQ(faultOf(box(0, 0, 1000, 0.0005)), "is thinner than a millimetre");
    EXPECT_EQ(faultOf({{0, 0}, {2, 2}, {2, 0}, {0, 2}}), "has edges that cross");
    EXPECT_EQ(faultOf({{0, 0}, {4, 0}, {4, 4}, {1, -1}, {0, 4}}), "has edges that cross");
    EXPECT_EQ(faultOf({{0, 0}, {4, 0}, {2, 0}, {2, 2}}), "has edges that cross"); // doubles back
    EXPECT_EQ(faultOf({{0, 0}, {2, 0}, {2, 2}, {1, 0}, {0, 2}}), "has edges that cross"); // touches
}

// Closed form: the shoelace sum.
TEST(PolygonArea, AgreesWithTheShoelaceFormula)
{
    EXPECT_DOUBLE_EQ(area_m2(box(1, 1, 4, 3)), 6.0);
    EXPECT_DOUBLE_EQ(area_m2(Polygon{{0, 0}, {0, 4}, {4, 4}, {2, 1}, {4, 0}}), 16.0 - 4.0);
    EXPECT_DOUBLE_EQ(area_m2(Polygon{{0, 0}, {4, 0}}), 0.0);
    EXPECT_DOUBLE_EQ(area_m2(Region{}), 0.0);
}

TEST(Covers, CountsInsideAndEdge)
{
    const Polygon outline{{0, 0}, {4, 0}, {4, 4}, {2, 1}, {0, 4}};
    EXPECT_TRUE(covers(outline, {1, 1}));
    EXPECT_TRUE(covers(outline, {0, 2}));
    EXPECT_TRUE(covers(outline, {4, 4}));
    EXPECT_FALSE(covers(outline, {2, 2}));
    EXPECT_FALSE(covers(outline, {-0.001, 2}));
}

// Closed form: two circles of radius 1 whose middles are 1 apart share 2 pi / 3 - sqrt(3) / 2.
TEST(Unite, CountsWhatOverlapsOnce)
{
    const double lens = 2.0 * std::numbers::pi / 3.0 - std::sqrt(3.0) / 2.0;
    const auto a = circle({0, 0}, 1.0);
    const auto b = circle({1, 0}, 1.0);
    OUTSIDE_NEAR(area_m2(unite({a, b})), 2.0 * std::numbers::pi - lens, 1e-3);
    OUTSIDE_NEAR(area_m2(intersect(toRegion(a), toRegion(b))), lens, 1e-3);
    OUTSIDE_NEAR(area_m2(unite({a, a, a})), std::numbers::pi, 1e-3);
    OUTSIDE_NEAR(area_m2(unite({a, circle({5, 0}, 1.0)})), 2.0 * std::numbers::pi, 1e-3);
    EXPECT_TRUE(unite({}).empty());
    EXPECT_TRUE(intersect(toRegion(a), toRegion(circle({5, 0}, 1.0))).empty());
}

TEST(Unite, KeepsTheHoleInARingOfBoxes)
{
    const auto ring = unite({box(0, 0, 5, 1), box(0, 4, 5, 5), box(0, 0, 1, 5), box(4, 0, 5, 5)});
    ASSERT_EQ(ring.size(), 1U);
    EXPECT_EQ(ring.front().rings.size(), 2U);
    EXPECT_NEAR(area_m2(ring), 25.0 - 9.0, 1e-9);
    EXPECT_NEAR(area_m2(intersect(ring, toRegion(box(2, 2, 3, 9)))), 1.0, 1e-9);
}

// Brute force: random points, by whether any disc covers them.
TEST(Unite, AgreesWithMonteCarloForManyShapes)
{
    Picker pick(11);
    struct Disc {
        Point2 middle;
        double radius;
    };
    std::vector<Disc> discs;
    std::vector<Polygon> shapes;
    for (int i = 0; i < 60; ++i) {
        discs.push_back({{pick(-5, 5), pick(-5, 5)}, pick(0.2, 1.5)});
        shapes.push_back(circle(discs.back().middle, discs.back().radius));
    }
    constexpr int kPoints = 20000;
    int hits = 0;
    for (int i = 0; i < kPoints; ++i) {
        const Point2 at{pick(-7, 7), pick(-7, 7)};
        const auto covered = [&](const Disc& d) { return norm(at - d.middle) <= d.radius; };
        hits += std::ranges::any_of(discs, covered) ? 1 : 0;
    }
    const double share = static_cast<double>(hits) / kPoints;
    const double sigma = 196.0 * std::sqrt(share * (1.0 - share) / kPoints);
    OUTSIDE_NEAR(area_m2(unite(shapes)), 196.0 * share, 4.0 * sigma);
}

TEST(ConvexHull, DropsWhatLiesInside)
{
    const auto hull = convexHull({{0, 0}, {1, 1}, {4, 0}, {2, 0}, {4, 3}, {0, 3}, {2, 2}});
    EXPECT_EQ(hull.size(), 4U);
    EXPECT_DOUBLE_EQ(area_m2(hull), 12.0);
}

TEST(Distance, IsTheLeastFromALineToAnOutline)
{
    const auto outline = box(0, 0, 4, 3);
    EXPECT_DOUBLE_EQ(distance_m({{6, -5}, {6, 5}}, outline), 2.0);
    EXPECT_DOUBLE_EQ(distance_m({{7, 7}, {7, 9}}, outline), 5.0);  // 3-4-5 to the corner
    EXPECT_DOUBLE_EQ(distance_m({{-1, 1}, {9, 1}}, outline), 0.0); // across
    EXPECT_DOUBLE_EQ(distance_m({{1, 1}, {2, 2}}, outline), 0.0);  // wholly inside
    EXPECT_DOUBLE_EQ(distance_m({{-1, 3}, {9, 3}}, outline), 0.0); // along an edge
}

// Closed form: a triangle's centre of area is the mean of its corners; an L of two boxes.
TEST(Centroid, AgreesWithClosedForms)
{
    const auto triangle = centroid({{0, 0}, {6, 0}, {0, 3}});
    OUTSIDE_NEAR(triangle.x, 2.0, 1e-12);
    OUTSIDE_NEAR(triangle.y, 1.0, 1e-12);
    const auto angle = centroid({{0, 0}, {4, 0}, {4, 1}, {1, 1}, {1, 3}, {0, 3}}); // 4 and 2 m2
    OUTSIDE_NEAR(angle.x, (4.0 * 2.0 + 2.0 * 0.5) / 6.0, 1e-12);
    OUTSIDE_NEAR(angle.y, (4.0 * 0.5 + 2.0 * 2.0) / 6.0, 1e-12);
}

TEST(GridPoints, FillABoxEvenlyRoundItsMiddle)
{
    const auto points = gridPoints(box(0, 0, 2, 1), 0.5);
    ASSERT_EQ(points.size(), 8U);
    Point2 sum{};
    for (const auto p : points)
        sum = sum + p;
    EXPECT_NEAR(sum.x / 8.0, 1.0, 1e-12);
    EXPECT_NEAR(sum.y / 8.0, 0.5, 1e-12);
    EXPECT_EQ(points.front(), (Point2{0.25, 0.25}));
}

// Law: all inside, and as many as the area holds.
TEST(GridPoints, LieInsideAndCountTheArea)
{
    Picker pick(12);
    for (int round = 0; round < 60; ++round) {
        Polygon outline;
        const int corners = 3 + round % 9;
        for (int i = 0; i < corners; ++i) {
            const double turn = 2.0 * std::numbers::pi * (i + pick(0, 0.8)) / corners;
            outline.push_back(pick(1, 4) * Point2{std::cos(turn), std::sin(turn)});
        }
        const auto points = gridPoints(outline, 0.05);
        for (const auto p : points)
            EXPECT_LT(distance_m({p, p + Point2{1e-9, 0}}, outline), 1e-6) << round;
        const double area = area_m2(outline);
        EXPECT_NEAR(static_cast<double>(points.size()) * 0.0025, area, 0.03 * area + 0.1) << round;
    }
}

TEST(GridPoints, HitEvenAThinStripThatLiesAskew)
{
    const Polygon sliver{{0, 0}, {1000, 999}, {1000, 999.003}, {0, 0.003}};
    ASSERT_FALSE(polygonFault(sliver));
    const auto points = gridPoints(sliver, 2.0);
    ASSERT_FALSE(points.empty());
    for (const auto p : points) // one may lie on an edge, to rounding
        EXPECT_LT(distance_m({p, p + Point2{1e-9, 0}}, sliver), 1e-6);
}

// Closed form: pieces that cross aside of each other, pieces that lie end to end, and points.
TEST(Segment, DistancesAgreeWithClosedForms)
{
    EXPECT_DOUBLE_EQ(pointToSegment_m({2, 3, 0}, {0, 0, 0}, {4, 0, 0}), 3.0);
    EXPECT_DOUBLE_EQ(pointToSegment_m({7, 4, 0}, {0, 0, 0}, {4, 0, 0}), 5.0);
    EXPECT_DOUBLE_EQ(pointToSegment_m({3, 4, 0}, {0, 0, 0}, {0, 0, 0}), 5.0);
    EXPECT_DOUBLE_EQ(segmentDistance_m({-1, 0, 0}, {1, 0, 0}, {0, -1, 2}, {0, 1, 2}), 2.0);
    EXPECT_DOUBLE_EQ(segmentDistance_m({0, 0, 0}, {1, 0, 0}, {4, 4, 0}, {9, 4, 0}), 5.0);
    EXPECT_DOUBLE_EQ(segmentDistance_m({0, 0, 0}, {4, 0, 0}, {1, 2, 0}, {9, 2, 0}), 2.0);
    EXPECT_DOUBLE_EQ(segmentDistance_m({0, 0, 0}, {2, 2, 0}, {0, 2, 0}, {2, 0, 0}), 0.0);
    EXPECT_DOUBLE_EQ(segmentDistance_m({1, 1, 1}, {1, 1, 1}, {1, 1, 4}, {1, 1, 4}), 3.0);
}

// Brute force: the least over a fine grid along both pieces.
TEST(Segment, DistancesAgreeWithAGrid)
{
    Picker pick(13);
    const auto place = [&] { return Vec3{pick(-1, 1), pick(-1, 1), pick(-1, 1)}; };
    for (int round = 0; round < 60; ++round) {
        const Vec3 a0 = place();
        const Vec3 a1 = round % 6 == 0 ? a0 : place();
        const Vec3 b0 = place();
        const Vec3 b1 = round % 5 == 0 ? b0 + (a1 - a0) : place();
        double least = 1e9;
        for (int i = 0; i <= 200; ++i)
            for (int j = 0; j <= 200; ++j)
                least =
                    std::min(least, norm(between(a0, a1, i / 200.0) - between(b0, b1, j / 200.0)));
        const double found = segmentDistance_m(a0, a1, b0, b1);
        EXPECT_LE(found, least + 1e-12) << round;
        EXPECT_GT(found, least - 0.02) << round;
    }
}

TEST(Simplified, KeepsCornersAndDropsWhatIsStraight)
{
    const std::vector<Point2> line{{0, 0}, {1, 0.001}, {2, 0}, {2.001, 1}, {2, 2}};
    EXPECT_EQ(simplified(line, 0.01), (std::vector<std::size_t>{0, 2, 4}));
    EXPECT_EQ(simplified(line, 0.0001).size(), 5U);
    EXPECT_EQ(simplified(std::span(line).first(2), 1.0).size(), 2U);
}
