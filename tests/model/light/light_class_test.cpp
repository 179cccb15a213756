#include "model/light/light_class.hpp"

#include <gtest/gtest.h>

using namespace model;
using namespace model::light;

// Published: Penn State Extension's classes (6 h and more, 4 to 6, 2 to 4, less), as relayed by
// two garden pages.
TEST(LightClass, FollowsThePublishedHours)
{
    EXPECT_EQ(lightClass(6.0), LightClass::fullSun);
    EXPECT_EQ(lightClass(5.9), LightClass::partSun);
    EXPECT_EQ(lightClass(4.0), LightClass::partSun);
    EXPECT_EQ(lightClass(2.0), LightClass::partShade);
    EXPECT_EQ(lightClass(0.0), LightClass::fullShade);
}

TEST(Suits, JudgesByTheWorseOfHoursAndDose)
{
    Plant plant;
    EXPECT_EQ(suits(plant, 5.0, 20.0), Suits::notKnown);
    plant.minSun_h = 4.0;
    plant.goodSun_h = 6.0;
    EXPECT_EQ(suits(plant, 6.0, 0.0), Suits::well);
    EXPECT_EQ(suits(plant, 4.5, 0.0), Suits::barely);
    EXPECT_EQ(suits(plant, 3.9, 99.0), Suits::tooDark);
    plant.minDli_mol = 10.0;
    plant.goodDli_mol = 20.0;
    EXPECT_EQ(suits(plant, 6.0, 9.0), Suits::tooDark);
    EXPECT_EQ(suits(plant, 6.0, 15.0), Suits::barely);
    EXPECT_EQ(suits(plant, 6.0, 25.0), Suits::well);
}

TEST(Suits, TakesAPlantThatHasOnlyALeastValue)
{
    Plant plant;
    plant.minSun_h = 3.0;
    EXPECT_EQ(suits(plant, 3.0, 0.0), Suits::well);
    EXPECT_EQ(suits(plant, 2.9, 0.0), Suits::tooDark);
}
