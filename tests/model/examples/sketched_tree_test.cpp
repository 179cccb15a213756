#include "tests/model/examples/example_files.hpp"
#include "tests/model/examples/sketched_tree.hpp"
#include "tests/outside/outside_check.hpp"

#include "model/crown/sketch_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <vector>

// Whole trees, sketched from the stem, height and crown of trees that were measured, against
// published national equations and against the leaf of those very trees.
namespace {

using model::SketchCause;

/// Species of the tables, and the row of tests/published/urban-trees.csv by its stem.
constexpr std::pair<const char*, double> kTrees[] = {
    {"Acer saccharinum", 40.1},    {"Acer saccharinum", 73.5}, {"Acer platanoides", 38.6},
    {"Acer platanoides", 77.7},    {"Betula pendula", 26.1},   {"Liquidambar styraciflua", 27.4},
    {"Pyrus calleryana", 28.6},    {"Zelkova serrata", 36.6},  {"Platanus x acerifolia", 18.7},
    {"Gleditsia triacanthos", 45}, {"Ginkgo biloba", 34.1},    {"Magnolia grandiflora", 35.5},
    {"Fraxinus americana", 22.6},  {"Juglans nigra", 52.3},    {"Tilia cordata", 72.9},
    {"Quercus rubra", 15.2},       {"Pinus strobus", 8.6},
};

MeasuredTree measured(const std::string& species, double stem_cm)
{
    for (const auto& row : publishedRows("urban-trees.csv"))
        if (row.cells[0] == species && std::stod(row.cells[2]) == stem_cm)
            return {species, stem_cm, std::stod(row.cells[3]), std::stod(row.cells[4]),
                    std::stod(row.cells[5])};
    throw std::runtime_error("no such measured tree: " + species);
}

model::SketchCheck check(const model::Tree& tree)
{
    const auto& species = *model::findSpecies(shippedTables(), tree.species);
    return model::checkSketch(tree, model::foliate(tree, species), species).value();
}

double off(const model::Plausible& figure)
{
    return std::log(figure.drawn / figure.expected);
}

double mean(const std::vector<double>& values)
{
    double sum = 0.0;
    for (const double value : values)
        sum += value;
    return sum / static_cast<double>(values.size());
}

// Published: Jenkins et al. 2003 (above-ground mass of forest trees, times 0.8 for open-grown ones,
// Nowak 1994) and McPherson, van Doorn & Peper 2016 (leaf, crown), Martin et al. 1998 (leaf mass
// per area). Each figure of each tree within two standard deviations of the fit; the mean of all
// within one half. The leaf in the mass by Jenkins et al., of forest trees, is told too: those
// open-grown trees, by the leaf measured on them, bear more of it.
TEST(SketchedTree, WeighsAndBearsLeafAsPublishedTreesOfItsGirth)
{
    std::vector<double> mass;
    std::vector<double> leaf;
    std::vector<double> leafMass;
    std::vector<double> forestLeaf;
    std::vector<double> measuredLeaf;
    for (const auto& [species, stem_cm] : kTrees) {
        const auto found = check(sketchedTree(measured(species, stem_cm)));
        std::cout << species << ' ' << stem_cm << " cm: mass " << found.dryMass_kg.drawn
                  << " kg, ratio " << std::exp(off(found.dryMass_kg)) << "; leaf "
                  << found.leafArea_m2.drawn << " m2, ratio " << std::exp(off(found.leafArea_m2))
                  << "; leaf mass " << found.leafMass_kg.drawn << " kg, ratio "
                  << std::exp(off(found.leafMass_kg)) << "; crown "
                  << std::exp(off(found.crownSpread_m)) << '\n';
        EXPECT_TRUE(found.dryMass_kg.within()) << species << ' ' << stem_cm;
        EXPECT_TRUE(found.leafArea_m2.within()) << species << ' ' << stem_cm;
        EXPECT_TRUE(found.leafMass_kg.within()) << species << ' ' << stem_cm;
        EXPECT_TRUE(found.crownSpread_m.within()) << species << ' ' << stem_cm;
        EXPECT_TRUE(found.causes.empty()) << species << ' ' << stem_cm;
        mass.push_back(off(found.dryMass_kg));
        leaf.push_back(off(found.leafArea_m2));
        leafMass.push_back(off(found.leafMass_kg));
        const double forest_kg =
            found.dryMass_kg.expected * std::exp(-4.0813 + 5.8816 / stem_cm); // hardwoods
        constexpr double kLeafDry_kg_m2 = 0.075;
        forestLeaf.push_back(std::log(found.leafMass_kg.drawn / forest_kg));
        measuredLeaf.push_back(
            std::log(kLeafDry_kg_m2 * measured(species, stem_cm).leaf_m2 / forest_kg));
    }
    std::cout << "mean ratios of " << mass.size() << " trees: mass " << std::exp(mean(mass))
              << ", leaf " << std::exp(mean(leaf)) << ", leaf mass " << std::exp(mean(leafMass))
              << "; leaf mass over that of forest trees " << std::exp(mean(forestLeaf))
              << ", of the leaf measured on them " << std::exp(mean(measuredLeaf)) << '\n';
    OUTSIDE_NEAR(mean(forestLeaf), mean(measuredLeaf), 0.25);
    OUTSIDE_NEAR(mean(mass), 0.0, 0.5 * 0.3605);
    OUTSIDE_NEAR(mean(leaf), 0.0, 0.5 * 0.6025);
}

// Published: the leaf measured on those very trees. Tolerance: two standard deviations of leaf at
// a given crown, 0.50 (fitted to the same table), and a quarter of that for the mean.
TEST(SketchedTree, BearsTheLeafThatWasMeasuredOnIt)
{
    std::vector<double> offs;
    for (const auto& [species, stem_cm] : kTrees) {
        const auto tree = measured(species, stem_cm);
        const double found = check(sketchedTree(tree)).leafArea_m2.drawn;
        offs.push_back(std::log(found / tree.leaf_m2));
        std::cout << species << ' ' << stem_cm << " cm: leaf " << found << " m2, measured "
                  << tree.leaf_m2 << '\n';
        OUTSIDE_NEAR(offs.back(), 0.0, 2.0 * 0.50) << species << ' ' << stem_cm;
    }
    OUTSIDE_NEAR(mean(offs), 0.0, 0.25);
}

TEST(SketchedTree, HasTheCrownItWasSketchedWith)
{
    for (const auto& [species, stem_cm] : kTrees) {
        const auto tree = measured(species, stem_cm);
        EXPECT_NEAR(check(sketchedTree(tree)).crownSpread_m.drawn / tree.crown_m, 1.0, 0.15)
            << species;
    }
}

// Closed form: the two fits of (C7), done anew from the published rows.
TEST(SketchCheck, KeepsTheFitsOfThePublishedTrees)
{
    const auto rows = publishedRows("urban-trees.csv");
    const auto fitted = [&rows](std::size_t column) {
        std::vector<double> x;
        std::vector<double> y;
        for (const auto& row : rows) {
            x.push_back(std::log(std::stod(row.cells[2])));
            y.push_back(std::log(std::stod(row.cells[column])));
        }
        double xx = 0.0;
        double xy = 0.0;
        for (std::size_t i = 0; i < x.size(); ++i) {
            xx += std::pow(x[i] - mean(x), 2);
            xy += (x[i] - mean(x)) * (y[i] - mean(y));
        }
        return std::pair(xy / xx, mean(y) - xy / xx * mean(x));
    };
    auto tree = sketchedTree(measured("Acer saccharinum", 40.1));
    const auto found = check(tree);
    const double d = std::log(100.0 * found.stemDiameter_m);
    const auto [leafSlope, leafStart] = fitted(5);
    OUTSIDE_NEAR(found.leafArea_m2.expected, std::exp(leafStart + leafSlope * d),
                 0.001 * found.leafArea_m2.expected);
    const auto [crownSlope, crownStart] = fitted(4);
    OUTSIDE_NEAR(found.crownSpread_m.expected, std::exp(crownStart + crownSlope * d),
                 0.001 * found.crownSpread_m.expected);
}

// Published: Jenkins et al. 2003, Tables 4 and 6, worked for a red maple of 30 cm: 460.3 kg, of
// which 9.454 kg leaf.
TEST(SketchCheck, KeepsThePublishedBiomass)
{
    const auto fit = model::biomassFit(model::BiomassGroup::mapleBirch);
    OUTSIDE_NEAR(std::exp(fit.b0 + fit.b1 * std::log(30.0)), 460.3, 0.05);
    for (const auto& row : publishedRows("biomass-jenkins.csv")) {
        const auto group = row.cells[0] == "maple_birch" ? model::BiomassGroup::mapleBirch
                                                         : model::BiomassGroup::mixedHardwood;
        EXPECT_DOUBLE_EQ(model::biomassFit(group).b0, std::stod(row.cells[1]));
        EXPECT_DOUBLE_EQ(model::biomassFit(group).b1, std::stod(row.cells[2]));
        OUTSIDE_NEAR(model::biomassFit(group).spread, std::stod(row.cells[3]), 1e-9);
    }
}

void thicken(model::Tree& tree, double times, bool stem, bool limbs)
{
    for (auto& limb : tree.limbs)
        if (limb.parent ? limbs : stem)
            for (auto& station : limb.stations)
                station.diameter_m *= times;
}

void widen(model::Tree& tree, double times)
{
    for (auto& limb : tree.limbs) {
        for (auto& station : limb.stations) {
            station.position_m.x *= times;
            station.position_m.y *= times;
        }
        if (limb.foliage)
            limb.foliage->radius_m *= times;
    }
}

// A sketch spoilt in one way is doubted for that reason.
TEST(SketchCheck, NamesTheLikelyCause)
{
    const auto sound = sketchedTree(measured("Acer saccharinum", 40.1));
    const auto causesOf = [&sound](auto spoil) {
        auto tree = sound;
        spoil(tree);
        return check(tree).causes;
    };
    using Causes = std::vector<SketchCause>;
    EXPECT_EQ(causesOf([](auto&) {}), Causes{});
    EXPECT_EQ(causesOf([](auto& tree) { thicken(tree, 0.5, true, false); }),
              Causes{SketchCause::girthSmall});
    EXPECT_EQ(causesOf([](auto& tree) { thicken(tree, 2.2, true, false); }),
              Causes{SketchCause::girthLarge});
    EXPECT_EQ(causesOf([](auto& tree) { thicken(tree, 4.0, false, true); }),
              Causes{SketchCause::limbsThick});
    EXPECT_EQ(causesOf([](auto& tree) {
                  widen(tree, 0.45);
                  thicken(tree, 1.6, false, true);
              }),
              Causes{SketchCause::crownNarrow});
    EXPECT_EQ(causesOf([](auto& tree) {
                  for (auto& limb : tree.limbs)
                      if (limb.foliage)
                          limb.foliage->radius_m *= 3.0;
              }),
              Causes{SketchCause::crownWide});
}

TEST(SketchCheck, KnowsNothingOfWhipsAndBareTrees)
{
    auto tree = sketchedTree(measured("Acer saccharinum", 40.1));
    const auto& species = *model::findSpecies(shippedTables(), tree.species);
    EXPECT_FALSE(model::checkSketch(tree, {}, species));
    thicken(tree, 0.1, true, true);
    EXPECT_FALSE(model::checkSketch(tree, model::foliate(tree, species), species));
}

// The trees drawn by hand are none to doubt.
TEST(SketchCheck, FindsNothingOddInTheExamples)
{
    for (const auto* name : kExamples) {
        const auto found = check(example(name).trees.front());
        EXPECT_TRUE(found.causes.empty()) << name << ": mass " << std::exp(off(found.dryMass_kg))
                                          << ", crown " << std::exp(off(found.crownSpread_m));
    }
}

} // namespace
