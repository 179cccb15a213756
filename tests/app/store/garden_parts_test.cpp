#include "app/store/garden_parts.hpp"

#include "model/document/validate.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/model/document/random_garden.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace app {
namespace {

constexpr std::uint32_t kGardens = 60;

// Law: taken apart and put together, a garden is what it was.
TEST(GardenParts, MakeTheGardenTheyWereTakenFrom)
{
    for (std::uint32_t seed = 1; seed <= kGardens; ++seed) {
        const auto garden = randomGarden(seed);
        const auto reading = gardenOf(partsOf(garden));
        ASSERT_TRUE(reading.garden) << seed << ": " << oneLine(reading.faults.front());
        ASSERT_TRUE(*reading.garden == garden) << seed;
    }
}

// Law: the difference leads from any garden to any other, and back.
TEST(GardenParts, LeadFromOneGardenToAnotherAndBack)
{
    for (std::uint32_t seed = 1; seed <= kGardens; ++seed) {
        const auto before = randomGarden(seed);
        const auto after = randomGarden(seed + 1);
        const auto change = difference(before, after);
        const auto there = applied(before, change);
        ASSERT_TRUE(there.garden) << seed << ": " << oneLine(there.faults.front());
        ASSERT_TRUE(*there.garden == after) << seed;
        const auto back = applied(after, reversed(change));
        ASSERT_TRUE(back.garden && *back.garden == before) << seed;
    }
}

// Law: two steps at once are the one after the other.
TEST(GardenParts, OfTwoEditsAreThoseOfOne)
{
    for (std::uint32_t seed = 1; seed <= kGardens; ++seed) {
        const auto a = randomGarden(seed);
        const auto b = randomGarden(seed + 1);
        const auto c = randomGarden(seed + 2);
        const auto both = merged(difference(a, b), difference(b, c));
        const auto there = applied(a, both);
        ASSERT_TRUE(there.garden && *there.garden == c) << seed;
        EXPECT_TRUE(merged(both, reversed(both)).empty()) << seed;
    }
}

TEST(GardenParts, OfAMovedLimbAreThatLimbAlone)
{
    const auto before = smallGarden();
    auto after = before;
    after.trees[0].limbs[1].stations[2].position_m.z += 0.3;
    const auto change = difference(before, after);
    ASSERT_EQ(change.size(), 1U);
    EXPECT_EQ(change[0].key, (PartKey{"limbs", "maple", "bough"}));
}

TEST(GardenParts, KeepTheOrderOfThings)
{
    const auto before = smallGarden();
    auto after = before;
    std::ranges::reverse(after.trees[0].limbs);
    const auto there = applied(before, difference(before, after));
    ASSERT_TRUE(there.garden);
    EXPECT_EQ(*there.garden, after);
}

TEST(GardenParts, OfNoTreeAreRefused)
{
    auto parts = partsOf(smallGarden());
    parts.erase({"trees", "", "maple"});
    const auto reading = gardenOf(parts);
    ASSERT_FALSE(reading.garden);
    EXPECT_NE(oneLine(reading.faults.front()).find("maple"), std::string::npos);
}

TEST(GardenParts, ThatAreNoJsonAreNamedByTheirPlace)
{
    auto parts = partsOf(smallGarden());
    parts[{"limbs", "maple", "bough"}].document = "{\"id\": \"bough\"";
    const auto reading = gardenOf(parts);
    ASSERT_FALSE(reading.garden);
    EXPECT_EQ(reading.faults.front().pointer, "/trees/0/limbs/1");
}

TEST(GardenParts, WithoutTheGardenItselfAreRefused)
{
    EXPECT_FALSE(gardenOf({}).garden);
}

} // namespace
} // namespace app
