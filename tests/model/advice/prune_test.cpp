#include "model/advice/prune.hpp"

#include <gtest/gtest.h>

#include <stdexcept>

namespace model::advice {
namespace {

/// A trunk of 4 m; a level limb of 3 m at 2 m height with laterals at 1 m and 2 m.
Tree smallTree()
{
    const auto limb = [](const char* id, std::optional<std::string> parent, double at, Vec3 from,
                         Vec3 to, double thick) {
        Limb one;
        one.id = id;
        one.parent = std::move(parent);
        one.attachedAt_m = at;
        one.stations = {{from, thick, {}}, {to, thick / 2.0, {}}};
        return one;
    };
    Tree tree;
    tree.limbs = {limb("trunk", {}, 0.0, {0, 0, 0}, {0, 0, 4}, 0.2),
                  limb("low", "trunk", 2.0, {0, 0, 2}, {3, 0, 2}, 0.08),
                  limb("inner", "low", 1.0, {1, 0, 2}, {1, 1, 2}, 0.04),
                  limb("outer", "low", 2.0, {2, 0, 2}, {2, 1, 2}, 0.03),
                  limb("twig", "outer", 0.5, {2, 0.5, 2}, {2.5, 0.5, 2}, 0.01)};
    tree.limbs[1].foliage = Foliage{1.5, 0.4, 1.0, {}, FoliageDensity::medium, 0.0, {}};
    tree.limbs[1].fruit_kg = 6.0;
    return tree;
}

TEST(AfterCut, RemovalTakesTheLimbAndAllThatGrowsFromIt)
{
    const auto after = afterCut(smallTree(), {CutKind::removal, "outer", 0.0, {}, {}, {}});
    EXPECT_EQ(after.limbs.size(), 3u);
    EXPECT_EQ(limbIndex(after, "twig"), kNoLimb);
}

TEST(AfterCut, ReductionEndsAtTheLateralThatTakesOver)
{
    const auto after = afterCut(smallTree(), {CutKind::reduction, "low", 1.0, {}, {}, {}});
    const auto& low = after.limbs[limbIndex(after, "low")];
    EXPECT_DOUBLE_EQ(length_m(low), 1.0);
    EXPECT_NE(limbIndex(after, "inner"), kNoLimb);
    EXPECT_EQ(limbIndex(after, "outer"), kNoLimb);
    EXPECT_FALSE(low.foliage) << "its leaves start beyond the cut";
    EXPECT_DOUBLE_EQ(low.fruit_kg, 0.0);
}

TEST(AfterCut, ReductionKeepsTheShareOfTheCropThatHangsBeforeTheCut)
{
    const auto after = afterCut(smallTree(), {CutKind::reduction, "low", 2.0, {}, {}, {}});
    EXPECT_NEAR(after.limbs[1].fruit_kg, 6.0 * 0.5 / 1.5, 1e-12);
}

TEST(AfterCut, LiftingLeavesNoShootBelowTheHeight)
{
    const auto after = afterCut(smallTree(), {CutKind::lifting, "low", 0.0, 1.2, {}, {}});
    EXPECT_EQ(after.limbs[1].foliage->hem_m, 1.2);
    const auto lower = afterCut(after, {CutKind::lifting, "low", 0.0, 0.8, {}, {}});
    EXPECT_EQ(lower.limbs[1].foliage->hem_m, 1.2) << "a lower lift doesn't grow shoots back";
}

TEST(AfterCut, ThinningTwiceTakesAShareOfWhatIsLeft)
{
    const Cut quarter{CutKind::thinning, "low", 0.0, {}, 0.25, {}};
    const auto after = afterCut(afterCut(smallTree(), quarter), quarter);
    EXPECT_DOUBLE_EQ(after.limbs[1].foliage->thinned, 1.0 - 0.75 * 0.75);
}

TEST(AfterCut, LeavesTheDrawnTreeAlone)
{
    const auto tree = smallTree();
    const auto copy = tree;
    (void)afterCut(tree, {CutKind::removal, "low", 0.0, {}, {}, {}});
    EXPECT_EQ(tree, copy);
}

TEST(AfterCut, RefusesWhatIsNoPruning)
{
    EXPECT_THROW((void)afterCut(smallTree(), {CutKind::removal, "trunk", 0.0, {}, {}, {}}),
                 std::domain_error);
    EXPECT_THROW((void)afterCut(smallTree(), {CutKind::removal, "nobody", 0.0, {}, {}, {}}),
                 std::domain_error);
    EXPECT_THROW((void)afterCut(smallTree(), {CutKind::reduction, "low", 3.5, {}, {}, {}}),
                 std::domain_error);
    EXPECT_THROW((void)afterCut(smallTree(), {CutKind::thinning, "low", 0.0, {}, 1.5, {}}),
                 std::domain_error);
}

} // namespace
} // namespace model::advice
