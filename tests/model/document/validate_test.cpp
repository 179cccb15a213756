#include "model/document/limits.hpp"
#include "model/document/validate.hpp"
#include "tests/model/document/random_garden.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>

using namespace model;

namespace {

/// A garden that has a tree, a planting, a strip, a line and a structure.
Garden furnishedGarden()
{
    for (std::uint32_t seed = 1;; ++seed) {
        auto garden = randomGarden(seed);
        if (!garden.trees.empty() && !garden.plantings.empty() && !garden.strips.empty() &&
            !garden.lines.empty() && !garden.structures.empty())
            return garden;
    }
}

std::string firstPointer(const Garden& garden)
{
    const auto faults = validate(garden);
    return faults.empty() ? "no fault" : faults.front().pointer;
}

Limb& trunkOf(Garden& garden)
{
    auto& limbs = garden.trees.front().limbs;
    return *std::ranges::find_if(limbs, [](const Limb& limb) { return !limb.parent; });
}

} // namespace

// What a window can hand over and no JSON text can: numbers that are not finite.
TEST(Validate, RefusesNumbersThatAreNotFinite)
{
    for (const double bad :
         {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        const auto good = furnishedGarden();
        auto garden = good;
        garden.place.latitude_deg = bad;
        EXPECT_EQ(firstPointer(garden), "/place/latitude_deg");
        garden = good;
        garden.designGust_m_s = bad;
        EXPECT_EQ(firstPointer(garden), "/design_gust_m_s");
        garden = good;
        garden.trees[0].position_m.y = bad;
        EXPECT_EQ(firstPointer(garden), "/trees/0/position_m/1");
        garden = good;
        garden.plantings[0].outline_m[1].x = bad;
        EXPECT_EQ(firstPointer(garden), "/plantings/0/outline_m/1/0");
        garden = good;
        garden.strips[0].headroom_m = bad;
        EXPECT_EQ(firstPointer(garden), "/strips/0/headroom_m");
        garden = good;
        garden.lines[0].path_m[1].z = bad;
        EXPECT_EQ(firstPointer(garden), "/electric_lines/0/path_m/1/2");
        garden = good;
        garden.structures[0].height_m = bad;
        EXPECT_EQ(firstPointer(garden), "/structures/0/height_m");
        garden = good;
        trunkOf(garden).stations[1].diameter_m = bad;
        EXPECT_NE(firstPointer(garden).find("/stations/1/diameter_m"), std::string::npos);
        garden = good;
        trunkOf(garden).stations[1].position_m.z = bad;
        EXPECT_NE(firstPointer(garden).find("/stations/1/position_m/2"), std::string::npos);
        garden = good;
        trunkOf(garden).fruit_kg = bad;
        EXPECT_NE(firstPointer(garden).find("/fruit_kg"), std::string::npos);
    }
}

TEST(Validate, HoldsTheLimitsOnCounts)
{
    const auto good = furnishedGarden();
    auto garden = good;
    while (garden.trees.size() <= limits::kTrees)
        garden.trees.push_back(garden.trees.front());
    EXPECT_EQ(firstPointer(garden), "/trees");
    garden = good;
    garden.trees[0].visits.assign(limits::kVisits + 1, Visit{});
    EXPECT_EQ(firstPointer(garden), "/trees/0/visits");
    garden = good;
    garden.trees[0].limbs.resize(limits::kLimbs + 1);
    EXPECT_EQ(firstPointer(garden), "/trees/0/limbs");
    garden = good;
    garden.strips[0].outline_m.resize(limits::kCorners + 1);
    EXPECT_EQ(firstPointer(garden), "/strips/0/outline_m");
    garden = good;
    garden.trees[0].limbs[0].stations.resize(limits::kStations + 1, {{0.0, 0.0, 1.0}, 0.1});
    EXPECT_EQ(firstPointer(garden), "/trees/0/limbs/0/stations");
    garden = good;
    garden.name = std::string(limits::kNameBytes + 1, 'x');
    EXPECT_EQ(firstPointer(garden), "/name");
}

// Unions are drawn by hand: up to the bark and 5 cm more is a union, beyond it is not.
TEST(Validate, LetsAUnionLieWithinTheBarkAndFiveCentimetres)
{
    Garden garden;
    Tree tree;
    tree.id = "t";
    tree.species = "s";
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0.0, 0.0, 0.0}, 0.3}, {{0.0, 0.0, 4.0}, 0.3}};
    Limb limb;
    limb.id = "limb";
    limb.parent = "trunk";
    limb.attachedAt_m = 2.0;
    const auto withUnionAt = [&](double off, double diameter) {
        limb.stations = {{{off, 0.0, 2.0}, diameter}, {{2.0, 0.0, 3.0}, 0.05}};
        tree.limbs = {limb, trunk};
        garden.trees = {tree};
        return firstPointer(garden);
    };
    EXPECT_EQ(withUnionAt(0.199, 0.1), "no fault");
    EXPECT_EQ(withUnionAt(0.201, 0.1), "/trees/0/limbs/0/stations/0/position_m");
    EXPECT_EQ(withUnionAt(0.0, 0.305), "no fault");
    EXPECT_EQ(withUnionAt(0.0, 0.307), "/trees/0/limbs/0/stations/0/diameter_m");
}

TEST(UnknownNames, PointToTheNameAndOfferTheNearest)
{
    Tables tables;
    tables.species.resize(1);
    tables.species[0].latin = "Acer rubrum";
    tables.plants.resize(1);
    tables.plants[0].latin = "Taxus baccata";
    Garden garden;
    garden.trees.resize(2);
    garden.trees[0].species = "Acer rubrum";
    garden.trees[1].species = "Acer rubum";
    garden.plantings.resize(1);
    garden.plantings[0].plant = "Prunus laurocerasus";
    const auto faults = unknownNames(garden, tables);
    ASSERT_EQ(faults.size(), 2U);
    EXPECT_EQ(oneLine(faults[0]), "/trees/1/species: found \"Acer rubum\", expected the Latin name "
                                  "of a species in the tables; did you mean \"Acer rubrum\"?");
    EXPECT_EQ(oneLine(faults[1]), "/plantings/0/plant: found \"Prunus laurocerasus\", expected the "
                                  "name of a plant in the tables");
}
