#include "model/light/leaf_angle.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <array>
#include <stdexcept>

using namespace model::light;

struct Leaves {
    double x, mean_deg;
    std::array<double, 5> projection; // at zenith 0, 30, 45, 60, 75
};
class LeafAngles : public testing::TestWithParam<Leaves> {};

// Brute force: Campbell 1986 (Agric. For. Meteorol. 36:317) and 1990 (49:173), worked outside this
// program.
INSTANTIATE_TEST_SUITE_P(Table, LeafAngles,
                         testing::Values(Leaves{0.5, 70.0, {.2921, .3864, .4618, .5266, .5693}},
                                         Leaves{1.0, 56.1, {.4997, .4997, .4997, .4997, .4997}},
                                         Leaves{2.0, 38.9, {.7248, .6533, .5730, .4794, .3971}},
                                         Leaves{3.0, 28.8, {.8284, .7306, .6174, .4783, .3422}},
                                         Leaves{5.0, 17.9, {.9146, .7974, .6595, .4840, .2954}}));

TEST_P(LeafAngles, AgreeWithTheTableToItsLastFigure)
{
    const auto& row = GetParam();
    const std::array zeniths{0.0, 30.0, 45.0, 60.0, 75.0};
    for (std::size_t i = 0; i < zeniths.size(); ++i)
        OUTSIDE_NEAR(leafProjection(row.x, zeniths[i]), row.projection[i], 0.00006) << zeniths[i];
    OUTSIDE_NEAR(meanLeafAngle_deg(row.x), row.mean_deg, 0.06);
}

struct Measured {
    const char* species;
    double x, at0, at45, at75;
};
class MeasuredLeaves : public testing::TestWithParam<Measured> {};

// Published: leaf angles of 23,882 leaves measured by Chianucci et al. 2018 (Ann. For. Sci. 75:50;
// data doi 10.17632/4rmc7r8zvy.2); G summed leaf by leaf, x from the mean angle. One number for
// a whole distribution is good to 0.04.
INSTANTIATE_TEST_SUITE_P(Table, MeasuredLeaves,
                         testing::Values(Measured{"Acer rubrum", 2.81, .83, .60, .36},
                                         Measured{"Betula pendula", 1.02, .53, .50, .50},
                                         Measured{"Carpinus betulus", 6.75, .96, .68, .27},
                                         Measured{"Malus domestica", 2.96, .85, .61, .35},
                                         Measured{"Quercus robur", 2.35, .78, .58, .38},
                                         Measured{"Liquidambar styraciflua", 0.52, .34, .46, .57}));

TEST_P(MeasuredLeaves, AreMetByOneNumberPerSpecies)
{
    const auto& row = GetParam();
    OUTSIDE_NEAR(leafProjection(row.x, 0.0), row.at0, 0.045) << row.species;
    OUTSIDE_NEAR(leafProjection(row.x, 45.0), row.at45, 0.03) << row.species;
    OUTSIDE_NEAR(leafProjection(row.x, 75.0), row.at75, 0.03) << row.species;
}

// Law: leaves in every direction show half their area to every beam; Campbell's fitted integral
// puts it at 0.4997.
TEST(LeafProjection, IsHalfForLeavesOfAllDirections)
{
    for (double z = 0.0; z <= 90.0; z += 10.0)
        EXPECT_NEAR(leafProjection(1.0, z), 0.5, 0.0005);
}

TEST(LeafProjection, RefusesAShapeThatIsNone)
{
    EXPECT_THROW((void)leafProjection(0.0, 30.0), std::domain_error);
    EXPECT_THROW((void)meanLeafAngle_deg(-1.0), std::domain_error);
}
