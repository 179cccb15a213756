#include "model/sketch/reshape.hpp"

#include "tests/model/sketch/small_tree.hpp"

#include <gtest/gtest.h>

namespace model::sketch {
namespace {

void expectNear(Vec3 found, Vec3 wanted)
{
    EXPECT_NEAR(norm(found - wanted), 0.0, 1e-12) << found.x << ' ' << found.y << ' ' << found.z;
}

// Closed form: the middle station of the bough lies half way along it.
TEST(BendLimb, TakesTheStationsBeforeAlongByTheirShareOfTheWay)
{
    const auto bent = bendLimb(smallTree(), "bough", 2, {2, 0, 2});
    expectNear(bent.limbs[1].stations[0].position_m, {0, 0, 2});
    expectNear(bent.limbs[1].stations[1].position_m, {1, 0, 2});
    expectNear(bent.limbs[1].stations[2].position_m, {2, 0, 2});
}

TEST(BendLimb, TakesTheStationsBeyondAlongByAsMuch)
{
    const auto bent = bendLimb(smallTree(), "bough", 1, {1, 0, 2});
    expectNear(bent.limbs[1].stations[2].position_m, {2, 0, 2.5});
}

TEST(BendLimb, CarriesWhatGrowsFromTheLimbWithoutBendingIt)
{
    const auto bent = bendLimb(smallTree(), "bough", 2, {2, 0, 2});
    expectNear(bent.limbs[2].stations[0].position_m, {1, 0, 2});
    expectNear(bent.limbs[2].stations[1].position_m, {1, 1, 2});
    EXPECT_NEAR(bent.limbs[2].attachedAt_m, 1.0, 1e-12);
    EXPECT_NEAR(bent.limbs[1].foliage->from_m, 1.0, 1e-12);
}

TEST(BendLimb, BackAgainGivesTheOldTree)
{
    const auto tree = smallTree();
    const auto there = bendLimb(tree, "stem", 2, {0.5, 0.2, 4.5});
    const auto back = bendLimb(there, "stem", 2, {0, 0, 4});
    for (std::size_t i = 0; i < tree.limbs.size(); ++i)
        for (std::size_t s = 0; s < tree.limbs[i].stations.size(); ++s)
            expectNear(back.limbs[i].stations[s].position_m, tree.limbs[i].stations[s].position_m);
}

TEST(BendLimb, RefusesTheUnionAndWhatIsNotThere)
{
    EXPECT_THROW(static_cast<void>(bendLimb(smallTree(), "bough", 0, {})), std::domain_error);
    EXPECT_THROW(static_cast<void>(bendLimb(smallTree(), "bough", 3, {})), std::domain_error);
    EXPECT_THROW(static_cast<void>(bendLimb(smallTree(), "twig", 1, {})), std::domain_error);
}

TEST(SlideUnion, KeepsTheLimbOnItsParentAndItsOwnShape)
{
    const auto slid = slideUnion(smallTree(), "bough", {0.7, 0.1, 3});
    EXPECT_NEAR(slid.limbs[1].attachedAt_m, 3.0, 1e-12);
    expectNear(slid.limbs[1].stations[2].position_m, {2, 0, 4});
    expectNear(slid.limbs[2].stations[1].position_m, {1, 1, 3.5});
    EXPECT_THROW(static_cast<void>(slideUnion(smallTree(), "stem", {})), std::domain_error);
}

TEST(RemoveLimb, TakesEverythingThatGrewFromIt)
{
    const auto left = removeLimb(smallTree(), "bough");
    ASSERT_EQ(left.limbs.size(), 1U);
    EXPECT_EQ(left.limbs[0].id, "stem");
    EXPECT_THROW(static_cast<void>(removeLimb(smallTree(), "stem")), std::domain_error);
}

TEST(RenameAndGirth, ChangeThatAndNothingElse)
{
    auto wanted = smallTree();
    wanted.limbs[1].name = "East bough";
    wanted.limbs[1].stations[1].diameter_m = 0.11;
    EXPECT_EQ(setDiameter(renameLimb(smallTree(), "bough", "East bough"), "bough", 1, 0.11),
              wanted);
}

} // namespace
} // namespace model::sketch
