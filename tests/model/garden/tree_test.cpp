#include "model/garden/tree.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <stdexcept>

using namespace model;

namespace {

Limb limb(const char* id, const char* parent, double attachedAt_m)
{
    Limb made;
    made.id = id;
    if (parent != nullptr)
        made.parent = parent;
    made.attachedAt_m = attachedAt_m;
    return made;
}

/// Drawn in no order: twig (on high), high and low (on the trunk), the trunk last.
Tree unordered()
{
    Tree tree;
    tree.limbs = {limb("twig", "high", 1), limb("high", "trunk", 4), limb("low", "trunk", 2),
                  limb("trunk", nullptr, 0)};
    return tree;
}

Tree stem(std::vector<Station> stations)
{
    Tree tree;
    tree.limbs = {limb("trunk", nullptr, 0)};
    tree.limbs[0].stations = std::move(stations);
    return tree;
}

using Indices = std::vector<std::size_t>;

} // namespace

TEST(LimbOrder, PutsEveryLimbAfterTheOneItGrowsFrom)
{
    const auto order = limbOrder(unordered());
    EXPECT_EQ(order.trunk, 3U);
    EXPECT_EQ(order.parent, (Indices{1, 3, 3, kNoLimb}));
    EXPECT_EQ(order.children[3], (Indices{2, 1})); // base first
    EXPECT_EQ(order.children[1], (Indices{0}));
    EXPECT_EQ(order.rootFirst, (Indices{3, 2, 1, 0}));
}

TEST(LimbOrder, KeepsTheDrawnOrderOfLimbsThatJoinAtOnePlace)
{
    Tree tree;
    tree.limbs = {limb("a", "trunk", 2), limb("trunk", nullptr, 0), limb("b", "trunk", 2)};
    EXPECT_EQ(limbOrder(tree).children[1], (Indices{0, 2}));
}

TEST(LimbOrder, RefusesWhatIsNoTree)
{
    EXPECT_THROW((void)limbOrder(Tree{}), std::domain_error);
    auto tree = unordered();
    tree.limbs.push_back(limb("second trunk", nullptr, 0));
    EXPECT_THROW((void)limbOrder(tree), std::domain_error);
    tree = unordered();
    tree.limbs[2].parent = "gone";
    EXPECT_THROW((void)limbOrder(tree), std::domain_error);
    tree = unordered();
    tree.limbs[1].parent = "twig"; // high and twig carry each other
    EXPECT_THROW((void)limbOrder(tree), std::domain_error);
    tree = unordered();
    tree.limbs[2].parent = "low"; // itself
    EXPECT_THROW((void)limbOrder(tree), std::domain_error);
}

TEST(LimbAndBeyond, IsTheLimbAndAllThatFallsWithIt)
{
    const auto order = limbOrder(unordered());
    EXPECT_EQ(limbAndBeyond(order, 1), (Indices{1, 0}));
    EXPECT_EQ(limbAndBeyond(order, 2), (Indices{2}));
    EXPECT_EQ(limbAndBeyond(order, 3).size(), 4U);
}

TEST(LimbIndex, FindsAnIdOrSaysNone)
{
    EXPECT_EQ(limbIndex(unordered(), "low"), 2U);
    EXPECT_EQ(limbIndex(unordered(), "lower"), kNoLimb);
}

TEST(TreeHeight, IsItsHighestWoodOrLeaf)
{
    auto tree = stem({{{0, 0, 0}, 0.3}, {{0, 0, 6}, 0.1}, {{2, 0, 5}, 0.05}});
    EXPECT_DOUBLE_EQ(height_m(tree), 6.0); // the bend, not the drooping tip
    auto& foliage = tree.limbs[0].foliage.emplace();
    foliage.radius_m = 0.8;
    foliage.from_m = 3.0;
    EXPECT_DOUBLE_EQ(height_m(tree), 6.8);
    foliage.from_m = 6.0 + norm(Vec3{2, 0, -1}) / 2.0; // leaf from the middle of the drooping end
    EXPECT_DOUBLE_EQ(height_m(tree), 5.5 + 0.8);
}

// Closed form: even taper from 0.4 m at the ground to 0.2 m at 4 m.
TEST(StemDiameter, IsTakenAtBreastHeight)
{
    OUTSIDE_NEAR(stemDiameter_m(stem({{{0, 0, 0}, 0.4}, {{0, 0, 4}, 0.2}})), 0.4 - 0.05 * 1.37,
                 1e-12);
    // Height counts, not length along a leaning stem.
    OUTSIDE_NEAR(stemDiameter_m(stem({{{0, 0, 0}, 0.4}, {{3, 0, 4}, 0.2}})), 0.4 - 0.05 * 1.37,
                 1e-12);
    OUTSIDE_NEAR(stemDiameter_m(stem({{{0, 0, 0}, 0.5}, {{0, 0, 1}, 0.4}, {{0, 0, 5}, 0.2}})),
                 0.4 - 0.05 * 0.37, 1e-12);
    EXPECT_DOUBLE_EQ(stemDiameter_m(stem({{{0, 0, 0}, 0.1}, {{0, 0, 1.2}, 0.06}})), 0.06);
}

TEST(StemDiameter, OfAStemThatDipsIsTakenWhereItFirstPasses)
{
    const auto tree =
        stem({{{0, 0, 0}, 0.4}, {{0, 0, 2}, 0.3}, {{2, 0, 1}, 0.2}, {{2, 0, 5}, 0.1}});
    EXPECT_NEAR(stemDiameter_m(tree), 0.4 - 0.05 * 1.37, 1e-12);
}

TEST(StemDiameter, OfAStemThatForksLowIsTakenBelowTheFork)
{
    auto tree = stem({{{0, 0, 0}, 0.4}, {{0, 0, 4}, 0.2}});
    tree.limbs.push_back(limb("high", "trunk", 2.0));
    EXPECT_NEAR(stemDiameter_m(tree), 0.4 - 0.05 * 1.37, 1e-12);
    tree.limbs.push_back(limb("low", "trunk", 0.8));
    EXPECT_NEAR(stemDiameter_m(tree), 0.4 - 0.05 * 0.8, 1e-12);
}
