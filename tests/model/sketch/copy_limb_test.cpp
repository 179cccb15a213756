#include "model/sketch/copy_limb.hpp"

#include "model/crown/leafy_bodies.hpp"
#include "model/document/validate.hpp"
#include "tests/model/sketch/small_tree.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace model::sketch {
namespace {

bool isValid(Tree tree)
{
    tree.species = "Acer rubrum";
    Garden garden;
    garden.designGust_m_s = 25.0;
    garden.trees = {std::move(tree)};
    return validate(garden).empty();
}

double leaf_m3(const Tree& tree)
{
    double sum = 0.0;
    for (const auto& body : leafyBodies(tree))
        sum += sharingVolume_m3(body);
    return sum;
}

TEST(CopyLimb, TurnsTheLimbAndWhatGrowsFromIt)
{
    const auto tree = copyLimb(smallTree(), "bough", 90.0); // east becomes south
    ASSERT_EQ(tree.limbs.size(), 5u);
    EXPECT_TRUE(isValid(tree));
    const auto& bough = tree.limbs[3];
    EXPECT_EQ(bough.parent, "stem");
    EXPECT_NEAR(bough.stations[2].position_m.x, 0.0, 1e-12);
    EXPECT_NEAR(bough.stations[2].position_m.y, -2.0, 1e-12);
    EXPECT_NEAR(bough.stations[2].position_m.z, 3.0, 1e-12);
    EXPECT_EQ(tree.limbs[4].parent, bough.id);
    EXPECT_THROW(static_cast<void>(copyLimb(smallTree(), "stem", 90.0)), std::domain_error);
    EXPECT_THROW(static_cast<void>(copyLimb(smallTree(), "none", 90.0)), std::domain_error);
}

TEST(MirrorLimb, GivesATwinOnTheOtherSide)
{
    const auto tree = mirrorLimb(smallTree(), "bough", {1.0, 0.0, 0.0});
    ASSERT_EQ(tree.limbs.size(), 5u);
    EXPECT_TRUE(isValid(tree));
    for (std::size_t s = 0; s < 3; ++s) {
        const auto& there = tree.limbs[1].stations[s].position_m;
        const auto& twin = tree.limbs[3].stations[s].position_m;
        EXPECT_NEAR(twin.x, -there.x, 1e-12);
        EXPECT_EQ(twin.z, there.z);
    }
    EXPECT_NEAR(leaf_m3(tree), 2.0 * leaf_m3(smallTree()), 1e-12);
}

// Law: a limb in two parts has the wood, the leaf and the fruit of the whole.
TEST(SplitLimb, LeavesWoodAndLeafWhereTheyWere)
{
    auto whole = smallTree();
    whole.limbs[1].fruit_kg = 6.0;
    whole.limbs[1].defects.emplace_back();
    whole.limbs[1].defects.back().at_m = 1.8;
    const auto tree = splitLimb(whole, "bough", 1.5);
    ASSERT_EQ(tree.limbs.size(), 4u);
    EXPECT_TRUE(isValid(tree));
    const auto& inner = tree.limbs[1];
    const auto& outer = tree.limbs[3];
    EXPECT_NEAR(length_m(inner) + length_m(outer), length_m(whole.limbs[1]), 1e-12);
    EXPECT_EQ(inner.stations.back(), outer.stations.front());
    EXPECT_NEAR(leaf_m3(tree), leaf_m3(whole), 1e-9);
    EXPECT_NEAR(inner.fruit_kg + outer.fruit_kg, 6.0, 1e-12);
    ASSERT_EQ(outer.defects.size(), 1u);
    EXPECT_NEAR(outer.defects[0].at_m, 0.3, 1e-12);
    EXPECT_TRUE(inner.defects.empty());
    EXPECT_EQ(tree.limbs[2].parent, "bough"); // joins before the split
    EXPECT_EQ(splitLimb(whole, "bough", 0.9).limbs[2].parent, outer.id);
    EXPECT_THROW(static_cast<void>(splitLimb(whole, "bough", 0.0)), std::domain_error);
}

} // namespace
} // namespace model::sketch
