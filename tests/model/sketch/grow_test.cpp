#include "model/sketch/grow.hpp"

#include "model/crown/leafy_bodies.hpp"
#include "model/geometry/simplify.hpp"
#include "model/sketch/first_tree.hpp"
#include "tests/model/sketch/small_tree.hpp"

#include <gtest/gtest.h>

namespace model::sketch {
namespace {

constexpr Vec3 kNorth{0, 1, 0};

TEST(GripOfWood, FindsTheNearestLimbAsSeenFromHere)
{
    const auto held = grip(smallTree(), {1.5, -8, 2.80}, kNorth, 0.3);
    ASSERT_TRUE(held);
    EXPECT_EQ(held->limb, 1U);
    EXPECT_NEAR(held->position_m.y, 0.0, 1e-12);
    EXPECT_NEAR(held->position_m.x, 1.5, 0.05);
}

TEST(GripOfWood, CountsFromTheBark)
{
    EXPECT_TRUE(grip(smallTree(), {-0.20, 0, 0.0}, kNorth, 0.06)); // bark at 0.15
    EXPECT_FALSE(grip(smallTree(), {-0.20, 0, 0.0}, kNorth, 0.04));
}

TEST(GripOfWood, SeesAForeshortenedLimbFromEveryBearing)
{
    // From the east the bough is seen end on, from its union up to its tip at 3 m.
    const auto held = grip(smallTree(), {9, 0.0, 3.0}, {-1, 0, 0}, 0.2);
    ASSERT_TRUE(held);
    EXPECT_LE(held->distance_m, 1e-12);
}

Stroke wavyStroke()
{
    Stroke stroke;
    for (int i = 0; i <= 60; ++i) {
        const double x = i / 30.0;
        stroke.points_m.push_back({x, 0, 3.0 + 0.4 * x + 0.005 * (i % 2)});
    }
    return stroke;
}

TEST(LimbFromStroke, SnapsToTheLimbItGrowsFrom)
{
    const auto tree = smallTree();
    const auto limb = limbFromStroke(tree, {0, 3.0, {0, 0, 3}, 0.0}, wavyStroke());
    EXPECT_EQ(limb.parent, "stem");
    EXPECT_EQ(limb.attachedAt_m, 3.0);
    EXPECT_EQ(limb.stations.front().position_m, (Vec3{0, 0, 3}));
    EXPECT_EQ(limb.measured, Measured::guessed);
    EXPECT_EQ(limbIndex(tree, limb.id), kNoLimb);
}

TEST(LimbFromStroke, KeepsFewStationsAndTapersTowardsTheTip)
{
    const auto limb = limbFromStroke(smallTree(), {0, 3.0, {0, 0, 3}, 0.0}, wavyStroke());
    EXPECT_GE(limb.stations.size(), 2U);
    EXPECT_LE(limb.stations.size(), 6U);
    for (std::size_t i = 1; i < limb.stations.size(); ++i)
        EXPECT_LT(limb.stations[i].diameter_m, limb.stations[i - 1].diameter_m);
    EXPECT_NEAR(limb.stations.front().diameter_m, length_m(limb) / 40.0, 1e-12);
}

TEST(LimbFromStroke, IsNeverThickerThanSixTenthsOfItsParent)
{
    const auto limb = limbFromStroke(smallTree(), {2, 0.5, {1, 0.5, 2.5}, 0.0}, wavyStroke());
    EXPECT_NEAR(limb.stations.front().diameter_m, 0.6 * 0.03, 1e-12);
}

TEST(LimbFromStroke, GetsLeafLikeItsNeighbours)
{
    const auto limb = limbFromStroke(smallTree(), {0, 3.0, {0, 0, 3}, 0.0}, wavyStroke());
    ASSERT_TRUE(limb.foliage);
    EXPECT_LE(limb.foliage->radius_m, 0.5);
    EXPECT_FALSE(limbFromStroke(smallTree(), {2, 0.5, {1, 0.5, 2.5}, 0.0}, wavyStroke()).foliage);
}

TEST(LimbFromStroke, NeedsAStroke)
{
    EXPECT_THROW(static_cast<void>(limbFromStroke(smallTree(), {}, {})), std::domain_error);
}

/// A first tree, all of it guessed, with a limb of 1 m that goes on from the end of its stem.
Tree withLimbAtTheTop(const Tree& tree)
{
    const auto& stem = tree.limbs.front();
    const Vec3 top = stem.stations.back().position_m;
    return growLimb(tree, {0, length_m(stem), top, 0.0},
                    {{top, top + Vec3{0.7, 0, 0.7}, top + Vec3{1.0, 0, 1.0}}});
}

// Closed form: the pipe model, section in proportion to leaf (docs/methods/sketch.md, K2), by the
// sharing volume of the one leafy body that a limb from a stroke has.
TEST(GrowLimb, GetsTheWoodThatItsLeafAsksForWhereItsParentWasAThinTip)
{
    const auto tree = firstTree({0.3, 9.0, 7.0, 2.0, Habit::spreading});
    ASSERT_LT(tree.limbs.front().stations.back().diameter_m, 0.02);
    const auto grown = withLimbAtTheTop(tree);
    ASSERT_EQ(grown.limbs.size(), tree.limbs.size() + 1);
    double all = 0.0;
    double own = 0.0;
    for (const auto& body : leafyBodies(grown)) {
        const double leaf = sharingVolume_m3(body) * body.density;
        all += leaf;
        own += body.limb + 1 == grown.limbs.size() ? leaf : 0.0;
    }
    const double pipes_m = stemDiameter_m(tree) * std::sqrt(own / all);
    EXPECT_GE(grown.limbs.back().stations.front().diameter_m, 0.94 * pipes_m);
}

TEST(GrowLimb, IsNowhereThickerThanTheWoodItGrowsFrom)
{
    const auto tree = firstTree({0.3, 9.0, 7.0, 2.0, Habit::spreading});
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        const auto& parent = tree.limbs[i];
        for (const double share : {0.3, 0.7, 1.0}) {
            const double at_m = share * length_m(parent);
            const Vec3 from = axisPoint(parent, at_m).position_m;
            const auto grown = growLimb(tree, {i, at_m, from, 0.0}, {{from, from + Vec3{1, 0, 1}}});
            EXPECT_LE(grown.limbs.back().stations.front().diameter_m,
                      axisPoint(grown.limbs[i], at_m).diameter_m + 1e-12)
                << parent.id << " at " << at_m;
        }
    }
}

TEST(GrowLimb, ThickensGuessedWoodBeneathItButNeitherTheStemsGirthNorMeasuredWood)
{
    auto tree = firstTree({0.3, 9.0, 7.0, 2.0, Habit::spreading});
    const auto grown = withLimbAtTheTop(tree);
    EXPECT_GT(grown.limbs.front().stations.back().diameter_m,
              tree.limbs.front().stations.back().diameter_m);
    EXPECT_EQ(stemDiameter_m(grown), stemDiameter_m(tree));
    tree.limbs.front().measured = Measured::taped;
    EXPECT_EQ(withLimbAtTheTop(tree).limbs.front(), tree.limbs.front());
}

TEST(GrowLimb, StartsAsLongAsMeasuredWoodCanCarry)
{
    auto tree = smallTree();
    for (auto& limb : tree.limbs)
        limb.measured = Measured::taped;
    EXPECT_NEAR(firstLength_m(tree, {2, 1.0, {1, 1, 2.5}, 0.0}), 40.0 * 0.6 * 0.02, 1e-12);
    EXPECT_EQ(firstLength_m(tree, {0, 3.0, {0, 0, 3}, 0.0}), 1.0);
    tree.limbs[2].measured = Measured::guessed; // it is thickened where need be
    EXPECT_EQ(firstLength_m(tree, {2, 1.0, {1, 1, 2.5}, 0.0}), 1.0);
}

// Law: Douglas & Peucker keep every dropped point within the tolerance of the line kept.
TEST(Simplified, KeepsEveryPointWithinTheTolerance)
{
    std::vector<Point2> line;
    for (int i = 0; i <= 100; ++i)
        line.push_back({i / 10.0, std::sin(i / 10.0)});
    const auto kept = simplified(line, 0.05);
    ASSERT_GE(kept.size(), 3U);
    EXPECT_LT(kept.size(), 30U);
    EXPECT_EQ(kept.front(), 0U);
    EXPECT_EQ(kept.back(), 100U);
    for (std::size_t k = 1; k < kept.size(); ++k)
        for (std::size_t i = kept[k - 1]; i <= kept[k]; ++i) {
            const Point2 a = line[kept[k - 1]];
            const Point2 run = line[kept[k]] - a;
            const Point2 off = line[i] - a;
            EXPECT_LE(std::abs(run.x * off.y - run.y * off.x) / norm(run), 0.05 + 1e-12);
        }
}

} // namespace
} // namespace model::sketch
