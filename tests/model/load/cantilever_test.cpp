#include "model/constants.hpp"
#include "model/load/drag.hpp"
#include "model/load/limb_load.hpp"
#include "model/load/load_case.hpp"
#include "model/load/wind.hpp"
#include "tests/model/load/samples.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

namespace model::load {
namespace {

constexpr double kShare = 1e-3; // closed forms are met to 0.1 %

TreeLoad still(const Tree& tree, const Species& species)
{
    return treeLoad(tree, foliate(tree, species), species, kSeaside, Exposure::open, {});
}

// Closed form: a cantilever's moment at its fixed end under its own even weight is w L^2 / 2,
// with an oblique slope w L^2 cos(slope) / 2 (any handbook of beams).
TEST(Cantilever, EvenWeightOnALevelBeam)
{
    const auto species = redMaple();
    const auto tree = cantilever(straight("beam", {0, 0, 2}, {4, 0, 2}, 0.12, 0.12));
    const auto load = still(tree, species).limbs.front();
    const double w = std::numbers::pi / 4.0 * 0.12 * 0.12 * 897.0 * kGravity_m_s2;
    OUTSIDE_NEAR(load.moment_Nm, w * 16.0 / 2.0, kShare * w * 8.0);
    OUTSIDE_NEAR(load.stress_Pa, load.moment_Nm * 32.0 / (std::numbers::pi * std::pow(0.12, 3)),
                 kShare * load.stress_Pa);
    EXPECT_DOUBLE_EQ(load.governingAt_m, 0.0);
}

TEST(Cantilever, EvenWeightOnASlopingBeam)
{
    const auto species = redMaple();
    const double slope = std::numbers::pi / 6.0;
    const auto tree = cantilever(straight(
        "beam", {0, 0, 2}, {4.0 * std::cos(slope), 0, 2 + 4.0 * std::sin(slope)}, 0.12, 0.12));
    const auto load = still(tree, species).limbs.front();
    const double w = std::numbers::pi / 4.0 * 0.12 * 0.12 * 897.0 * kGravity_m_s2;
    const double moment = w * 8.0 * std::cos(slope);
    EXPECT_NEAR(load.moment_Nm, moment, kShare * moment);
    const double axial = w * 4.0 * std::sin(slope) / (std::numbers::pi * 0.06 * 0.06);
    EXPECT_NEAR(load.stress_Pa, 32.0 * moment / (std::numbers::pi * std::pow(0.12, 3)) + axial,
                kShare * load.stress_Pa);
}

// Closed form: M0 = gamma pi L^2 (d0^2 + 2 d0 d1 + 3 d1^2) / 48 for a beam that tapers evenly.
TEST(Cantilever, OwnWeightOfATaperedBeam)
{
    const auto species = redMaple();
    for (const double thin : {0.12, 0.04, 0.001}) {
        const auto tree = cantilever(straight("beam", {0, 0, 2}, {0, 4, 2}, 0.12, thin));
        const auto load =
            loadCase(tree, foliate(tree, species), species, kSeaside, Exposure::open, {});
        const double gamma = 897.0 * kGravity_m_s2;
        const double expected = gamma * std::numbers::pi * 16.0 *
                                (0.12 * 0.12 + 2.0 * 0.12 * thin + 3.0 * thin * thin) / 48.0;
        const auto base = beyondPieces(load, 0, 0).front();
        const double moment = norm(momentAbout(base.weight, {0, 0, 2}));
        OUTSIDE_NEAR(moment, expected, kShare * expected) << thin;
    }
}

// Closed form: M = P x at a distance x from the tip; on a uniform beam the base governs.
TEST(Cantilever, PointLoadOnAUniformBeam)
{
    auto tree = cantilever(straight("beam", {0, 0, 2}, {4, 0, 2}, 0.12, 0.12));
    hangOnTip(tree, 200.0 / kGravity_m_s2);
    const auto load = still(tree, weightless()).limbs.front();
    OUTSIDE_NEAR(load.moment_Nm, 800.0, kShare * 800.0);
    EXPECT_DOUBLE_EQ(load.governingAt_m, 0.0);
}

// Closed form: with an even taper the stress under a tip load, 32 P x / (pi d^3), is greatest where
// d = 1.5 times the tip's, here 1 m from the tip: 9.431 MPa against 4.716 MPa at the base.
TEST(Cantilever, PointLoadOnATaperedBeamGovernsFarFromTheBase)
{
    auto tree = cantilever(straight("beam", {0, 0, 2}, {4, 0, 2}, 0.12, 0.04));
    hangOnTip(tree, 200.0 / kGravity_m_s2);
    const auto load = still(tree, weightless()).limbs.front();
    const double expected = 32.0 * 200.0 * 1.0 / (std::numbers::pi * std::pow(0.06, 3));
    OUTSIDE_NEAR(load.stress_Pa, expected, kShare * expected);
    OUTSIDE_NEAR(load.governingAt_m, 3.0, 0.05);
    OUTSIDE_NEAR(load.diameter_m, 0.06, 0.001);
}

// Closed form: wind at an angle a to a level bar of even thickness pushes with q d L sin(a) along
// the wind; the moment about the upright axis at the base is that times sin(a) L / 2.
TEST(Cantilever, ObliqueWindOnABareBar)
{
    const auto species = weightless();
    const auto tree = cantilever(straight("beam", {0, 0, 10}, {4, 0, 10}, 0.12, 0.12));
    const double gust = 30.0;
    const auto load = loadCase(tree, foliate(tree, species), species, kSeaside, Exposure::open,
                               {.gust_m_s = gust});
    const double speed = gust * gustShare(Exposure::open, 10.0);
    const double q = 0.5 * airDensity_kg_m3(0.0) * speed * speed * kBareWoodDrag;
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        const auto base = beyondPieces(load, 0, i).front();
        const auto moment = askedAt(load.limbs[0].pieces[0], 0.0, base, {i, false});
        // The bar points east: wind from bearing b meets it at 90 degrees less b.
        const double sine =
            std::abs(std::cos(10.0 * static_cast<double>(i) * std::numbers::pi / 180.0));
        const double expected = q * 0.12 * 4.0 * sine * sine * 2.0;
        OUTSIDE_NEAR(norm(moment.windMoment_Nm), expected, kShare * q * 0.12 * 8.0) << 10 * i;
        OUTSIDE_NEAR(base.drag.force_N, q * 0.12 * 4.0 * sine, kShare * q * 0.48) << 10 * i;
    }
}

// Closed form: a level leafy limb with wind square to it, worked by hand: outline 2 r L + pi r^2,
// force q Cd A, moment F L / 2 at the base; with its weight by Pythagoras.
TEST(Cantilever, SquareWindOnALeafyLimb)
{
    auto species = weightless();
    const auto tree =
        cantilever(leafy(straight("beam", {0, 0, 10}, {5, 0, 10}, 0.14, 0.14), 0.0, 0.8));
    Foliation bare;
    const auto load =
        treeLoad(tree, bare, species, kSeaside, Exposure::open, {.gust_m_s = 28.0}).limbs.front();
    const double speed = 28.0 * gustShare(Exposure::open, 10.0);
    const double q = 0.5 * 1.225 * speed * speed;
    const double area = 2.0 * 0.8 * 5.0 + std::numbers::pi * 0.64;
    const double force = q * 0.25 * std::pow(speed / 30.0, -0.7) * area;
    OUTSIDE_NEAR(load.wind_N, force, kShare * force);
    OUTSIDE_NEAR(load.windMoment_Nm, force * 2.5, kShare * force * 2.5);
    EXPECT_TRUE(load.governingBearing_deg == 0.0 || load.governingBearing_deg == 180.0);
}

// Closed form: a level lateral that leaves square from a level limb twists it by its own moment.
TEST(Cantilever, ASideBranchTwistsTheLimbItGrowsFrom)
{
    auto tree = cantilever(straight("beam", {0, 0, 2}, {4, 0, 2}, 0.12, 0.12));
    Limb side = growing(straight("side", {2, 0, 2}, {2, 1.5, 2}, 0.05, 0.05), "beam", 2.0);
    side.fruit_kg = 20.0;
    tree.limbs.push_back(side);
    const auto load = still(tree, weightless()).limbs.front();
    const double weight = 20.0 * kGravity_m_s2;
    OUTSIDE_NEAR(load.torsion_Nm, weight * 0.75, kShare * weight);
    OUTSIDE_NEAR(load.moment_Nm, weight * 2.0, kShare * weight * 2.0);
}

TEST(TreeLoad, RefusesAGustThatIsNoSpeed)
{
    const auto species = redMaple();
    const auto tree = cantilever(straight("beam", {0, 0, 2}, {4, 0, 2}, 0.12, 0.12));
    const auto foliation = foliate(tree, species);
    for (const double gust : {-1.0, std::nan(""), HUGE_VAL})
        EXPECT_THROW(
            (void)treeLoad(tree, foliation, species, kSeaside, Exposure::open, {.gust_m_s = gust}),
            std::domain_error);
}

} // namespace
} // namespace model::load
