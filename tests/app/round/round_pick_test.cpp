#include "app/round/round_pick.hpp"

#include "app/round/round_scene.hpp"
#include "tests/app/small_garden.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

class RoundPickTest : public ::testing::Test {
protected:
    [[nodiscard]] std::optional<RoundPick> pick(model::Vec3 from, model::Vec3 at,
                                                double reach_m = 0.0) const
    {
        const auto way = foot_ + at - from;
        return pickWood(tree_, foot_, {from, (1.0 / norm(way)) * way}, reach_m);
    }

    model::Garden garden_ = smallGarden();
    model::Tree tree_ = garden_.trees[0];
    model::Vec3 foot_ = foot_m(garden_, tree_.position_m);
};

TEST_F(RoundPickTest, MeetsTheLimbThatTheLookGoesThrough)
{
    const auto met = pick({4, -5, 3}, {1, 0, 2.5});
    ASSERT_TRUE(met);
    EXPECT_EQ(tree_.limbs[met->limb].id, "bough");
    EXPECT_NEAR(met->at_m, std::hypot(1.0, 0.5), 1e-6);
}

TEST_F(RoundPickTest, MeetsTheNearerOfTwoInOneLine)
{
    const auto fromEast = pick({20, 6, 2.8}, {0, 0, 2.8}); // the bough's end stands before the stem
    ASSERT_TRUE(fromEast);
    EXPECT_EQ(tree_.limbs[fromEast->limb].id, "bough");
    const auto fromWest = pick({-20, 6, 2.8}, {0, 0, 2.8});
    ASSERT_TRUE(fromWest);
    EXPECT_EQ(tree_.limbs[fromWest->limb].id, "stem");
    EXPECT_NEAR(fromWest->distance_m, 24.0 - 0.11, 0.03);
}

TEST_F(RoundPickTest, TakesWhatItPassesByLeastAndNothingFurtherOff)
{
    const auto beside = pick({4, -5, 1}, {0.25, 0, 1}, 0.2);
    ASSERT_TRUE(beside);
    EXPECT_EQ(tree_.limbs[beside->limb].id, "stem");
    EXPECT_NEAR(beside->at_m, 1.0, 0.05);
    EXPECT_FALSE(pick({4, -5, 1}, {0.45, 0, 1}, 0.2));
}

TEST_F(RoundPickTest, DoesNotMeetWhatLiesBehind)
{
    EXPECT_FALSE(pickWood(tree_, foot_, {{4, -5, 1}, {0, -1, 0}}, 0.5));
}

} // namespace
} // namespace app
