#include "model/crown/foliage.hpp"
#include "model/crown/leafy_bodies.hpp"
#include "model/crown/mass.hpp"
#include "model/garden/tree.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <numeric>

using namespace model;

namespace {

constexpr double kPi = std::numbers::pi;

/// Invented wood and leaf with round numbers.
Species plainSpecies()
{
    Species species;
    species.wood.basicSpecificGravity.value = 0.5;
    species.wood.limbDensity_kg_m3.value = 900.0;
    species.leaf.crownLai = Sourced{3.0, "invented", Evidence::assumed};
    return species;
}

Limb limbOf(const char* id, const char* parent, double attachedAt_m, std::vector<Station> stations)
{
    Limb limb;
    limb.id = id;
    if (parent != nullptr)
        limb.parent = parent;
    limb.attachedAt_m = attachedAt_m;
    limb.stations = std::move(stations);
    return limb;
}

Foliage leafy(double from_m, double radius_m, double hanging_m = 0.0)
{
    Foliage foliage;
    foliage.from_m = from_m;
    foliage.radius_m = radius_m;
    foliage.hanging_m = hanging_m;
    return foliage;
}

/// A stem and three leafy limbs; east and west overlap near the stem.
Tree smallTree()
{
    Tree tree;
    tree.limbs = {limbOf("trunk", nullptr, 0, {{{0, 0, 0}, 0.3}, {{0, 0, 5}, 0.1}}),
                  limbOf("east", "trunk", 3, {{{0, 0, 3}, 0.1}, {{3, 0, 4}, 0.03}}),
                  limbOf("west", "trunk", 3.5, {{{0, 0, 3.5}, 0.1}, {{-2.5, 0.5, 4.5}, 0.03}}),
                  limbOf("north", "east", 1, {{{0.95, 0, 3.3}, 0.05}, {{1, 2, 3.6}, 0.02}})};
    tree.limbs[0].foliage = leafy(3.0, 1.0);
    tree.limbs[1].foliage = leafy(0.8, 0.7, 1.2);
    tree.limbs[2].foliage = leafy(0.5, 0.8);
    tree.limbs[2].foliage->density = FoliageDensity::dense;
    tree.limbs[3].foliage = leafy(0.2, 0.4);
    tree.limbs[3].foliage->density = FoliageDensity::sparse;
    return tree;
}

double sum(const std::vector<double>& values)
{
    return std::accumulate(values.begin(), values.end(), 0.0);
}

} // namespace

TEST(LeafyBodies, FollowTheLimbFromWhereLeavesStart)
{
    Tree tree;
    tree.limbs = {
        limbOf("trunk", nullptr, 0, {{{0, 0, 0}, 0.3}, {{0, 0, 4}, 0.2}, {{3, 0, 4}, 0.1}})};
    tree.limbs[0].foliage = leafy(3.0, 0.5, 1.0);
    const auto bodies = leafyBodies(tree);
    ASSERT_EQ(bodies.size(), 2U);
    EXPECT_EQ(bodies[0].solid, (Curtain{{0, 0, 3}, {0, 0, 4}, 0.5, 1.0}));
    EXPECT_EQ(bodies[1].solid, (Curtain{{0, 0, 4}, {3, 0, 4}, 0.5, 1.0}));
    EXPECT_DOUBLE_EQ(bodies[0].from_m, 3.0);
    EXPECT_DOUBLE_EQ(bodies[1].from_m, 4.0);
    EXPECT_DOUBLE_EQ(bodies[1].to_m, 7.0);
}

// Shoots end at the ground, or at the height they were lifted to, and the hem is level to 0.3 m.
TEST(LeafyBodies, LetShootsEndAtTheGroundOrTheHem)
{
    Tree tree;
    tree.limbs = {limbOf("trunk", nullptr, 0, {{{0, 0, 0.5}, 0.2}, {{6, 0, 5}, 0.1}})};
    for (const double hem : {0.0, 1.8}) {
        tree.limbs[0].foliage = leafy(2.0, 0.4, 9.0);
        if (hem > 0.0)
            tree.limbs[0].foliage->hem_m = hem;
        double along = 2.0;
        for (const auto& body : leafyBodies(tree)) {
            const double bottom = lowestPoint(body.solid).z;
            const double bare = std::min(body.solid.a.z, body.solid.b.z) - 0.4;
            EXPECT_GE(bottom, std::min(hem, bare) - 1e-12);
            EXPECT_LE(bottom, std::max(hem + 1e-12, bare));
            EXPECT_LE(std::abs(body.solid.b.z - body.solid.a.z), 0.3 + 1e-12);
            EXPECT_DOUBLE_EQ(body.from_m, along);
            along = body.to_m;
        }
        EXPECT_NEAR(along, length_m(tree.limbs[0]), 1e-12);
    }
}

// (C1) by hand: one upright leafy stem is a disc on plan.
TEST(Foliate, GivesTheCrownTheLeafOfItsSpecies)
{
    Tree tree;
    tree.limbs = {limbOf("trunk", nullptr, 0, {{{0, 0, 0}, 0.3}, {{0, 0, 5}, 0.1}})};
    tree.limbs[0].foliage = leafy(2.0, 1.5);
    const auto foliation = foliate(tree, plainSpecies());
    EXPECT_NEAR(foliation.crownArea_m2, kPi * 2.25, 1e-9);
    EXPECT_NEAR(foliation.leafArea_m2, 3.0 * kPi * 2.25, 1e-9);
    const double volume = volume_m3(Curtain{{0, 0, 2}, {0, 0, 5}, 1.5, 0});
    EXPECT_NEAR(foliation.crownVolume_m3, volume, 0.01 * volume);
    EXPECT_NEAR(foliation.leafAreaDensity_1_m * foliation.crownVolume_m3, foliation.leafArea_m2,
                1e-9);
    EXPECT_EQ(foliation.laiSource, "invented");
    EXPECT_EQ(foliation.laiEvidence, Evidence::assumed);
}

TEST(Foliate, SaysThatABlankLeafAreaIndexIsTheMedianOfAll)
{
    auto species = plainSpecies();
    species.leaf.crownLai.reset();
    const auto foliation = foliate(smallTree(), species);
    // Published: Urban Tree Database (McPherson, van Doorn & Peper 2016), median of 11,117 trees.
    auto median = plainSpecies();
    median.leaf.crownLai->value = 2.81;
    EXPECT_NEAR(foliation.leafArea_m2, foliate(smallTree(), median).leafArea_m2, 1e-9);
    EXPECT_EQ(foliation.laiEvidence, Evidence::assumed);
}

TEST(Foliate, OfABareTreeIsNothing)
{
    Tree tree;
    tree.limbs = {limbOf("trunk", nullptr, 0, {{{0, 0, 0}, 0.3}, {{0, 0, 5}, 0.1}})};
    const auto foliation = foliate(tree, plainSpecies());
    EXPECT_EQ(foliation.leafArea_m2, 0.0);
    EXPECT_EQ(foliation.crownArea_m2, 0.0);
    EXPECT_EQ(sum(leafAreaByLimb_m2(tree, foliation)), 0.0);
}

// Law: the shares add up to the whole.
TEST(Foliate, SharesAllLeafAmongTheLimbs)
{
    const auto tree = smallTree();
    const auto foliation = foliate(tree, plainSpecies());
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    EXPECT_NEAR(sum(areas), foliation.leafArea_m2, 1e-9);
    for (const double area : areas)
        EXPECT_GT(area, 0.0);
}

// Law: cutting one limb takes its leaf and leaves the others' alone.
TEST(Foliate, KeepsTheOthersLeafWhenALimbGoes)
{
    const auto tree = smallTree();
    const auto foliation = foliate(tree, plainSpecies());
    const auto before = leafAreaByLimb_m2(tree, foliation);
    auto cut = tree;
    cut.limbs.erase(cut.limbs.begin() + 2);
    const auto after = leafAreaByLimb_m2(cut, foliation);
    EXPECT_DOUBLE_EQ(after[0], before[0]);
    EXPECT_DOUBLE_EQ(after[1], before[1]);
    EXPECT_DOUBLE_EQ(after[2], before[3]);
}

// Law: drawing the same limb with more stations changes nothing.
TEST(Foliate, GivesTheSameLeafHoweverManyStationsAreDrawn)
{
    const auto tree = smallTree();
    auto finer = tree;
    for (auto& limb : finer.limbs) {
        std::vector<Station> stations;
        for (double share = 0.0; share < 1.0; share += 0.125)
            stations.push_back(stretch(limb, share * length_m(limb), length_m(limb)).front());
        stations.push_back(limb.stations.back());
        limb.stations = stations;
    }
    const auto foliation = foliate(tree, plainSpecies());
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    const auto finerAreas = leafAreaByLimb_m2(finer, foliation);
    for (std::size_t i = 0; i < areas.size(); ++i)
        EXPECT_NEAR(finerAreas[i], areas[i], 1e-9);
    const double whole = foliation.leafArea_m2; // outlines drawn with corners differ a little
    EXPECT_NEAR(foliate(finer, plainSpecies()).leafArea_m2, whole, 0.01 * whole);
}

TEST(Foliate, TakesTheShareThatWasThinned)
{
    auto tree = smallTree();
    const auto foliation = foliate(tree, plainSpecies());
    const double before = leafAreaByLimb_m2(tree, foliation)[1];
    tree.limbs[1].foliage->thinned = 0.2;
    EXPECT_NEAR(leafAreaByLimb_m2(tree, foliation)[1], 0.8 * before, 1e-12);
}

// Law: leaf and so leaf mass go with the density class (0.6, 1, 1.4; assumed).
TEST(Foliate, GivesADenselyDrawnTreeMoreLeaf)
{
    auto tree = smallTree();
    const auto all = [&](FoliageDensity density) {
        for (auto& limb : tree.limbs)
            limb.foliage->density = density;
        return foliate(tree, plainSpecies()).leafArea_m2;
    };
    const double medium = all(FoliageDensity::medium);
    EXPECT_NEAR(all(FoliageDensity::sparse), 0.6 * medium, 1e-9);
    EXPECT_NEAR(all(FoliageDensity::dense), 1.4 * medium, 1e-9);
}

// (C3), (C4) by hand: 0.075 / 0.35 kg fresh leaf; 0.075 / 0.284 kg dry twig, green by
// 900 / (1000 * 0.5).
TEST(LeafyMass, AgreesWithItsFormulas)
{
    const auto mass = leafyMassPerArea(plainSpecies());
    EXPECT_NEAR(mass.leaf_kg, 0.2143, 1e-4);
    EXPECT_NEAR(mass.twig_kg, 0.2641 * 1.8, 1e-4);
}

// Closed form: frustums pi L / 12 (D^2 + D d + d^2); a cylinder; a cone nearly.
TEST(WoodVolume, IsThatOfARowOfFrustums)
{
    const auto volume = [](std::vector<Station> stations) {
        return woodVolume_m3(limbOf("a", nullptr, 0, std::move(stations)));
    };
    OUTSIDE_NEAR(volume({{{0, 0, 0}, 0.4}, {{0, 0, 3}, 0.4}}), kPi * 0.04 * 3.0, 1e-12);
    OUTSIDE_NEAR(volume({{{0, 0, 0}, 0.6}, {{3, 0, 4}, 1e-9}}), kPi * 0.09 * 5.0 / 3.0, 1e-8);
    OUTSIDE_NEAR(volume({{{0, 0, 0}, 0.4}, {{0, 0, 2}, 0.3}, {{0, 0, 4}, 0.2}}),
                 volume({{{0, 0, 0}, 0.4}, {{0, 0, 4}, 0.2}}), 1e-12);
}

TEST(LimbMasses, AddWoodLeafTwigsAndFruit)
{
    auto tree = smallTree();
    tree.limbs[1].fruit_kg = 12.0;
    const auto species = plainSpecies();
    const auto foliation = foliate(tree, species);
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    const auto masses = limbMasses(tree, foliation, species);
    ASSERT_EQ(masses.size(), 4U);
    EXPECT_NEAR(masses[1].wood_kg, 900.0 * woodVolume_m3(tree.limbs[1]), 1e-12);
    EXPECT_NEAR(masses[1].leaf_kg, areas[1] * leafyMassPerArea(species).leaf_kg, 1e-12);
    EXPECT_EQ(masses[1].fruit_kg, 12.0);
    const auto bare = limbMasses(tree, foliation, species, false);
    EXPECT_EQ(bare[1].leaf_kg, 0.0);
    EXPECT_EQ(bare[1].twig_kg, masses[1].twig_kg);
    EXPECT_NEAR(masses[1].total_kg() - bare[1].total_kg(), masses[1].leaf_kg, 1e-12);
}
