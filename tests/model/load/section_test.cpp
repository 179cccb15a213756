#include "model/load/section.hpp"
#include "model/load/strength.hpp"
#include "tests/model/load/samples.hpp"

#include <gtest/gtest.h>

namespace model::load {
namespace {

constexpr double kPi = std::numbers::pi;

// Closed form (any handbook of mechanics), d = 150 mm under 5000 N m and 800 N m.
TEST(Section, OfARoundBarIsThatOfTheHandbook)
{
    const auto bar = solidSection(0.15);
    EXPECT_NEAR(bar.bending_m3, 3.313e-4, 5e-8);
    EXPECT_NEAR(5000.0 / bar.bending_m3, 15.09e6, 0.005e6);
    EXPECT_NEAR(800.0 / bar.torsion_m3, 1.207e6, 0.0005e6);
    const double stress = principalStress_Pa(bar, {.bending_Nm = 5000.0, .torsion_Nm = -800.0});
    EXPECT_NEAR(stress, 15.19e6, 0.005e6);
}

TEST(Section, AddsPullOrPushToTheWorstFibre)
{
    const auto bar = solidSection(0.10);
    const double bent = principalStress_Pa(bar, {.bending_Nm = 1000.0});
    const double area = kPi * 0.0025;
    for (const double axial : {-5000.0, 5000.0})
        EXPECT_NEAR(principalStress_Pa(bar, {.bending_Nm = 1000.0, .axial_N = axial}),
                    bent + 5000.0 / area, 1.0);
}

TEST(Section, OfAHollowLosesTheFourthPower)
{
    EXPECT_NEAR(hollowSection(0.15, 0.025).bending_m3 / solidSection(0.15).bending_m3, 0.8025,
                5e-5);
    // A wall of 0.3 of the radius loses 24 % (Mattheck & Breloer 1994 speak of that wall).
    EXPECT_NEAR(hollowSection(0.20, 0.03).bending_m3 / solidSection(0.20).bending_m3, 0.7599, 5e-5);
    EXPECT_DOUBLE_EQ(hollowSection(0.20, 0.5).bending_m3, solidSection(0.20).bending_m3);
}

/// Second moments of a ring sector about its own centre, by summing 4 million small areas.
struct Summed {
    double area_m2{}, towards_m4{}, across_m4{}, centre_m{}, reachTowards_m{}, reachAcross_m{};
};
Summed summed(double outer, double inner, double opening)
{
    constexpr int kRadii = 1000;
    constexpr int kAngles = 4000;
    Summed sum;
    double first = 0.0;
    double towards = 0.0;
    double least = 1e9;
    double most = -1e9;
    const double dr = (outer - inner) / kRadii;
    const double da = (2.0 * kPi - opening) / kAngles;
    for (int i = 0; i < kRadii; ++i)
        for (int j = 0; j < kAngles; ++j) {
            const double r = inner + (i + 0.5) * dr;
            const double angle = opening / 2.0 + (j + 0.5) * da;
            const double part = r * dr * da;
            const double x = r * std::cos(angle);
            const double y = r * std::sin(angle);
            sum.area_m2 += part;
            first += part * x;
            towards += part * x * x;
            sum.across_m4 += part * y * y;
            least = std::min(least, x);
            most = std::max(most, x);
            sum.reachAcross_m = std::max(sum.reachAcross_m, std::abs(y));
        }
    sum.centre_m = first / sum.area_m2;
    sum.towards_m4 = towards - sum.area_m2 * sum.centre_m * sum.centre_m;
    sum.reachTowards_m = std::max(most - sum.centre_m, sum.centre_m - least);
    return sum;
}

// Brute force: a hollow of radius 70 mm in a bar of radius 100 mm, open by 60 to 240 degrees.
TEST(Section, OfAnOpenHollowAgreesWithSummedAreas)
{
    for (const double opening_deg : {60.0, 90.0, 120.0, 240.0}) {
        const double opening = opening_deg * kPi / 180.0;
        const auto ours = openSection(0.20, 0.03, opening);
        const auto sum = summed(0.10, 0.07, opening);
        EXPECT_NEAR(ours.area_m2 / sum.area_m2, 1.0, 1e-3) << opening_deg;
        const double weakest =
            std::min(sum.towards_m4 / sum.reachTowards_m, sum.across_m4 / sum.reachAcross_m);
        EXPECT_NEAR(ours.bending_m3 / weakest, 1.0, 3e-3) << opening_deg;
    }
    EXPECT_DOUBLE_EQ(openSection(0.2, 0.03, 0.0).bending_m3, hollowSection(0.2, 0.03).bending_m3);
}

// Closed form, worked by hand: R 100 mm, hollow r 50 mm, 30 mm off the centre: 5.837e-4 m3 on the
// thin side, 0.7432 of the solid bar.
TEST(Section, OfAnOffCentreHollowIsWeakOnItsThinSide)
{
    EXPECT_NEAR(offCentreModulus_m3(0.20, 0.10, 0.03), 5.837e-4, 5e-8);
    EXPECT_NEAR(offCentreModulus_m3(0.20, 0.10, 0.0), hollowSection(0.20, 0.05).bending_m3, 1e-12);
}

// Published: Kane & Clouston 2008 (AUF 34:101, Table 4): codominant maples failed at 0.42 of the
// stress of sound stems; Kane 2007 (AUF 33:283, Table 3): limbs, failures at attachments included,
// at 0.72 of clear wood inside bark. The floor of the union factor lies between their ratio and 1.
TEST(UnionFactor, LiesWhereForksWereBroken)
{
    EXPECT_DOUBLE_EQ(unionFactor(Union::sound, 0.3), 1.0);
    EXPECT_DOUBLE_EQ(unionFactor(Union::sound, 0.5), 1.0);
    EXPECT_GE(unionFactor(Union::codominant, 1.0), 27.24 / 64.42);
    EXPECT_LE(unionFactor(Union::codominant, 1.0), 27.24 / 64.42 / 0.64);
    // Slater & Ennos 2015 (AUF 41:194), 241 hazel forks: included bark 24 % lower.
    EXPECT_NEAR(unionFactor(Union::includedBark, 0.9) / unionFactor(Union::sound, 0.9), 0.76, 1e-9);
}

TEST(UnionFactor, FallsWithTheAspectRatioAndNoFurtherThanEqualStems)
{
    double last = 1.0;
    for (double ratio = 0.0; ratio < 1.5; ratio += 0.01) {
        const double factor = unionFactor(Union::sound, ratio);
        EXPECT_LE(factor, last);
        last = factor;
    }
    EXPECT_DOUBLE_EQ(last, unionFactor(Union::sound, 0.83));
}

TEST(Strength, IsNeverGivenToCracksOrDeadWood)
{
    EXPECT_FALSE(leavesStrength(DefectKind::crack));
    EXPECT_FALSE(leavesStrength(DefectKind::dead));
    EXPECT_TRUE(leavesStrength(DefectKind::cavity));
    EXPECT_TRUE(leavesStrength(DefectKind::openCavity));
}

} // namespace
} // namespace model::load
