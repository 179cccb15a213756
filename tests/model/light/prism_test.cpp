#include "model/light/prism.hpp"
#include "model/light/sun.hpp"

#include <gtest/gtest.h>

using namespace model;
using namespace model::light;

namespace {

Structure house(StructureKind kind = StructureKind::building)
{
    Structure structure;
    structure.kind = kind;
    structure.height_m = 4.0;
    structure.outline_m = {{-5, -10}, {5, -10}, {5, -4}, {-5, -4}}; // its north wall at y = -4
    return structure;
}
double through(const Structure& structure, Vec3 from, double elevation_deg, double azimuth_deg)
{
    return transmittance(prism(structure).value(), from,
                         towardsSun({elevation_deg, azimuth_deg, 1.0}));
}

} // namespace

// Closed form: the shadow of a 4 m wall is 4 / tan h long: 4 m at 45 degrees.
TEST(Prism, ShadesAsFarAsItsHeightOverTheTangent)
{
    EXPECT_EQ(through(house(), {0, -0.01, 0}, 45.0, 180.0), 0.0);
    EXPECT_EQ(through(house(), {0, 0.01, 0}, 45.0, 180.0), 1.0);
    EXPECT_EQ(through(house(), {0, -1.99, 2}, 45.0, 180.0), 1.0);
    EXPECT_EQ(through(house(), {0, -2.01, 2}, 45.0, 180.0), 0.0);
}

// Law: no shade from behind, from beside, or onto its own roof; darkness inside.
TEST(Prism, ShadesNothingElse)
{
    EXPECT_EQ(through(house(), {0, -3, 0}, 45.0, 0.0), 1.0);
    EXPECT_EQ(through(house(), {9, -3, 0}, 20.0, 180.0), 1.0);
    EXPECT_EQ(through(house(), {0, -6, 4}, 5.0, 180.0), 1.0);
    EXPECT_EQ(through(house(), {0, -6, 1}, 90.0, 180.0), 0.0);
}

// Law: an L-shaped house leaves its corner free to the morning sun.
TEST(Prism, MayHaveCornersThatTurnIn)
{
    auto bent = house();
    bent.outline_m = {{0, 0}, {6, 0}, {6, 2}, {2, 2}, {2, 6}, {0, 6}};
    EXPECT_EQ(through(bent, {4, 4, 0}, 30.0, 90.0), 1.0);
    EXPECT_EQ(through(bent, {4, 4, 0}, 30.0, 270.0), 0.0);
    EXPECT_EQ(through(bent, {4, 4, 0}, 30.0, 180.0), 0.0);
}

TEST(Prism, LetsLightThroughGlassAndIsNoneForAPond)
{
    EXPECT_EQ(through(house(StructureKind::glasshouse), {0, -2, 0}, 45.0, 180.0), 0.7);
    EXPECT_FALSE(prism(house(StructureKind::pond)));
    auto flat = house();
    flat.height_m = 0.0;
    EXPECT_FALSE(prism(flat));
}
