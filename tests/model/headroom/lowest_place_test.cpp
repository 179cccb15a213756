#include "model/headroom/lowest_place.hpp"
#include "tests/outside/outside_check.hpp"

#include "tests/model/examples/example_files.hpp"
#include "tests/model/headroom/shapes.hpp"

#include <gtest/gtest.h>

using namespace model;
using headroom::lowestPlace;

namespace {

/// A stem at (10, 20) and one limb that climbs 3 in 4 east from 2 m, leafy all along with a body of
/// radius 0.5 and shoots of 0.4 m.
Tree risingLimb()
{
    Tree tree;
    tree.id = "tree";
    tree.position_m = {10, 20};
    tree.limbs = {limbOf("trunk", {{{0, 0, 0}, 0.3}, {{0, 0, 2}, 0.2}}),
                  limbOf("east", {{{0, 0, 2}, 0.1}, {{4, 0, 5}, 0.1}})};
    tree.limbs[1].parent = "trunk";
    tree.limbs[1].attachedAt_m = 2.0;
    return tree;
}

} // namespace

// Closed form, 3-4-5: a body of radius r whose axis climbs 3 in 4 reaches r / 0.8 straight below
// its axis; the place that touches lies 0.3 r further in on plan, so its axis is 0.6 r * 0.75
// lower.
TEST(LowestPlace, TakesARisingLimbApart)
{
    auto tree = risingLimb();
    const auto bare = lowestPlace(tree, box(12, 19, 13, 21));
    ASSERT_TRUE(bare);
    EXPECT_EQ(bare->limb, 1u);
    EXPECT_FALSE(bare->isLeaf);
    OUTSIDE_NEAR(bare->at_m.x, 12.0, 1e-4);
    OUTSIDE_NEAR(bare->height_m, 3.5 - 0.05 / 0.8, 1e-6);
    OUTSIDE_NEAR(bare->axis_m, 3.5 - 0.6 * 0.05 * 0.75, 1e-6);
    OUTSIDE_NEAR(bare->reach_m, 0.8 * 0.05, 1e-6);
    EXPECT_EQ(bare->hang_m, 0.0);
    tree.limbs[1].foliage = Foliage{};
    tree.limbs[1].foliage->radius_m = 0.5;
    const auto leafy = lowestPlace(tree, box(12, 19, 13, 21));
    ASSERT_TRUE(leafy);
    EXPECT_TRUE(leafy->isLeaf);
    OUTSIDE_NEAR(leafy->height_m, 3.5 - 0.5 / 0.8, 1e-6);
    OUTSIDE_NEAR(leafy->axis_m - leafy->reach_m, leafy->height_m, 1e-12);
}

TEST(LowestPlace, IsNowhereWhereNothingOverhangs)
{
    EXPECT_FALSE(lowestPlace(risingLimb(), box(0, 0, 5, 5)));
}

// Law: it is what treeHeadroom() tells, and its parts make it up, over every strip of every
// example.
TEST(LowestPlace, MakesUpTheHeadroomThatIsTold)
{
    for (const char* name : {"apple-path", "birch-lawn", "maple-drive"}) {
        const auto garden = example(name);
        for (const auto& tree : garden.trees) {
            const auto told = headroom::treeHeadroom(garden, tree);
            for (std::size_t i = 0; i < garden.strips.size(); ++i) {
                const auto place = lowestPlace(tree, garden.strips[i].outline_m);
                ASSERT_EQ(place.has_value(), told[i].height_m.has_value()) << name;
                if (!place)
                    continue;
                EXPECT_NEAR(place->height_m, *told[i].height_m, 1e-9) << name;
                EXPECT_NEAR(place->axis_m - place->reach_m - place->hang_m, place->height_m, 1e-9)
                    << name << ' ' << tree.limbs[place->limb].id;
            }
        }
    }
}
