#include "tests/model/examples/example_files.hpp"
#include "tests/outside/outside_check.hpp"

#include "model/advice/crown_shape.hpp"
#include "model/crown/mass.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <numbers>
#include <string>
#include <vector>

// The example trees are drawn by hand. An arborist should believe them: whole-tree figures are held
// against published equations, and each ratio is printed.
namespace {

struct Drawn {
    std::string name;
    model::Tree tree;
    const model::Species& species;
    model::Foliation foliation;
    model::LimbOrder order;
};

Drawn drawn(const std::string& name)
{
    auto tree = example(name).trees.front();
    const auto& species = *model::findSpecies(shippedTables(), tree.species);
    auto foliation = model::foliate(tree, species);
    auto order = model::limbOrder(tree);
    return {name, std::move(tree), species, std::move(foliation), std::move(order)};
}

double section_cm2(double diameter_m)
{
    return std::numbers::pi / 4.0 * diameter_m * diameter_m * 1.0e4;
}

/// Dry mass of wood and twigs of each limb by itself, kg.
std::vector<double> dryWood_kg(const Drawn& it)
{
    const double dryPerGreen = 1000.0 * it.species.wood.basicSpecificGravity.value /
                               it.species.wood.limbDensity_kg_m3.value;
    std::vector<double> dry;
    for (const auto& mass : model::limbMasses(it.tree, it.foliation, it.species, false))
        dry.push_back((mass.wood_kg + mass.twig_kg) * dryPerGreen);
    return dry;
}

double withBeyond(const Drawn& it, std::size_t limb, const std::vector<double>& each)
{
    double sum = 0.0;
    for (const auto i : model::limbAndBeyond(it.order, limb))
        sum += each[i];
    return sum;
}

/// Longest way along the wood from a limb's union to a tip, m.
double longestPath_m(const Drawn& it, std::size_t limb)
{
    double longest = model::length_m(it.tree.limbs[limb]);
    for (const auto child : it.order.children[limb])
        longest = std::max(longest, it.tree.limbs[child].attachedAt_m + longestPath_m(it, child));
    return longest;
}

void tell(const Drawn& it, const char* what, double found, double published)
{
    std::cout << it.name << ": " << what << ' ' << found << ", published " << published
              << ", ratio " << found / published << '\n';
    testing::Test::RecordProperty(it.name + ' ' + what, std::to_string(found / published));
}

class DrawnTree : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Examples, DrawnTree, testing::ValuesIn(kExamples), [](const auto& each) {
    std::string name = each.param;
    std::erase(name, '-');
    return name;
});

// Published: Jenkins et al. 2003, Table 4, forest trees; open-grown trees of the same girth weigh
// 0.8 times as much (Nowak 1994; Nowak & Crane 2002, Environmental Pollution 116: 381; recalled).
// Tolerance: one standard deviation of the published fit. The apple has its own test: pruned
// orchard trees are no forest trees.
TEST(DrawnTrees, WeighWhatTheirGirthSays)
{
    for (const auto* name : {"maple-drive", "birch-lawn"}) {
        const auto it = drawn(name);
        ASSERT_EQ(it.species.wood.biomassGroup, model::BiomassGroup::mapleBirch);
        const auto fit = publishedRows("biomass-jenkins.csv").front().cells;
        const double dbh_cm = 100.0 * model::stemDiameter_m(it.tree);
        const double published_kg =
            0.8 * std::exp(std::stod(fit[1]) + std::stod(fit[2]) * std::log(dbh_cm));
        constexpr double kLeafDry_kg_m2 = 0.075; // docs/methods/crown.md, C3
        const double found_kg = withBeyond(it, it.order.trunk, dryWood_kg(it)) +
                                kLeafDry_kg_m2 * it.foliation.leafArea_m2;
        tell(it, "above-ground dry mass, kg,", found_kg, published_kg);
        OUTSIDE_NEAR(std::log(found_kg / published_kg), 0.0, std::stod(fit[3])) << name;
    }
}

// Published: Nowak 1996, Forest Science 42: 504-507, open-grown trees of Chicago; coefficients and
// the residual mean square 0.232 (ln units) recalled. Shading 0.83, the mean of the species there.
TEST_P(DrawnTree, BearsTheLeafOfItsCrownByNowak)
{
    const auto it = drawn(GetParam());
    const auto shape = model::advice::crownShape(it.tree, it.foliation);
    const double height_m = shape.top_m - shape.base_m;
    const double width_m = 2.0 * std::sqrt(it.foliation.crownArea_m2 / std::numbers::pi);
    const double surface_m2 = std::numbers::pi * width_m * (height_m + width_m) / 2.0;
    const double published_m2 = std::exp(-4.3309 + 0.2942 * height_m + 0.7312 * width_m +
                                         5.7217 * 0.83 - 0.0148 * surface_m2);
    tell(it, "leaf area, m2,", it.foliation.leafArea_m2, published_m2);
    OUTSIDE_NEAR(std::log(it.foliation.leafArea_m2 / published_m2), 0.0, std::sqrt(0.232))
        << GetParam();
}

// Published: McPherson, van Doorn & Peper 2016, Urban Tree Database: quartiles of leaf area over
// crown area (trees/leaf.csv; for the apple those of 206 crabapples).
TEST_P(DrawnTree, BearsTheLeafOfItsCrownBySurvey)
{
    const auto it = drawn(GetParam());
    ASSERT_TRUE(it.species.leaf.crownLai);
    const double lai = it.foliation.leafArea_m2 / it.foliation.crownArea_m2;
    tell(it, "leaf per crown area", lai, it.species.leaf.crownLai->value);
    OUTSIDE_WITHIN(lai, it.species.leaf.laiQuartile1, it.species.leaf.laiQuartile3);
}

// Published: BAAD, Falster et al. 2015: leaf area over stem section, m2/cm2, whole trees of ten
// species at Coweeta: median 0.154, lower quartile 0.113; greatest median of a hardwood 0.380.
TEST_P(DrawnTree, BearsTheLeafOfItsStem)
{
    const auto it = drawn(GetParam());
    const double found = it.foliation.leafArea_m2 / section_cm2(model::stemDiameter_m(it.tree));
    tell(it, "leaf per stem section, m2/cm2,", found, 0.154);
    OUTSIDE_WITHIN(found, 0.113, 0.380);
}

// Published: tests/published/orchard-limbs.csv. Tolerance: two standard deviations for one limb,
// one for the mean of all.
TEST(DrawnTrees, TheApplesLimbsWeighAndReachWhatOrchardLimbsDo)
{
    const auto it = drawn("apple-path");
    const auto fits = publishedRows("orchard-limbs.csv");
    const auto dry = dryWood_kg(it);
    double massSum = 0.0;
    double pathSum = 0.0;
    double count = 0.0;
    const auto off = [&](std::size_t row, double found, double diameter_mm) {
        const auto& fit = fits[row].cells;
        const double line = std::stod(fit[1]) + std::stod(fit[2]) * std::log10(diameter_mm);
        return (std::log10(found) - line) / std::stod(fit[3]);
    };
    for (std::size_t limb = 0; limb < it.tree.limbs.size(); ++limb) {
        if (limb == it.order.trunk)
            continue;
        const double diameter_mm = 1000.0 * it.tree.limbs[limb].stations.front().diameter_m;
        const double mass = off(0, 1000.0 * withBeyond(it, limb, dry), diameter_mm);
        const double path = off(1, 100.0 * longestPath_m(it, limb), diameter_mm);
        OUTSIDE_NEAR(mass, 0.0, 2.0) << it.tree.limbs[limb].id;
        OUTSIDE_NEAR(path, 0.0, 2.0) << it.tree.limbs[limb].id;
        massSum += mass;
        pathSum += path;
        count += 1.0;
    }
    std::cout << "apple-path: limbs' dry mass " << massSum / count << " and reach "
              << pathSum / count << " standard deviations off orchard limbs, mean of " << count
              << '\n';
    OUTSIDE_NEAR(massSum / count, 0.0, 1.0);
    OUTSIDE_NEAR(pathSum / count, 0.0, 1.0);
}

// Published: the same; a heavy crop lies between the median and the greatest.
TEST(DrawnTrees, TheAppleBearsAHeavyCrop)
{
    const auto it = drawn("apple-path");
    double crop_kg = 0.0;
    for (const auto& limb : it.tree.limbs)
        crop_kg += limb.fruit_kg;
    const auto fit = publishedRows("orchard-limbs.csv")[3].cells;
    const double found = crop_kg / section_cm2(model::stemDiameter_m(it.tree));
    tell(it, "crop over stem section, kg/cm2,", found, std::stod(fit[1]));
    OUTSIDE_WITHIN(found, std::stod(fit[1]), std::stod(fit[3]));
}

/// Sum of the daughters' d^2 over the parent's at each fork; laterals that join within 0.3 m of
/// the one before, as at the head of an open-centre tree, make one fork.
std::vector<double> areaRatios(const Drawn& it)
{
    std::vector<double> ratios;
    for (std::size_t parent = 0; parent < it.tree.limbs.size(); ++parent) {
        const auto& limb = it.tree.limbs[parent];
        const auto& children = it.order.children[parent];
        for (std::size_t first = 0; first < children.size();) {
            const double from_m = it.tree.limbs[children[first]].attachedAt_m;
            double last_m = from_m;
            double thickest_m = 0.0;
            double daughters = 0.0;
            std::size_t next = first;
            for (; next < children.size() &&
                   it.tree.limbs[children[next]].attachedAt_m <= last_m + 0.3;
                 ++next) {
                const auto& child = it.tree.limbs[children[next]];
                last_m = child.attachedAt_m;
                const double d_m = child.stations.front().diameter_m;
                thickest_m = std::max(thickest_m, d_m);
                daughters += d_m * d_m;
            }
            const double beyond_m = last_m + std::max(0.2, 1.3 * thickest_m);
            if (beyond_m < model::length_m(limb))
                daughters += std::pow(model::axisPoint(limb, beyond_m).diameter_m, 2);
            ratios.push_back(daughters / std::pow(model::axisPoint(limb, from_m).diameter_m, 2));
            first = next;
        }
    }
    return ratios;
}

// Published: the area rule of the same orchard limbs: median within their quartiles. The bounds of
// a single fork are common practice, no source.
TEST_P(DrawnTree, ForksByTheAreaRule)
{
    const auto it = drawn(GetParam());
    auto ratios = areaRatios(it);
    ASSERT_GE(ratios.size(), 4U);
    std::ranges::sort(ratios);
    const double median = ratios[ratios.size() / 2];
    const auto fit = publishedRows("orchard-limbs.csv")[2].cells;
    tell(it, "daughters' over parents' section", median, std::stod(fit[1]));
    OUTSIDE_WITHIN(median, std::stod(fit[2]), std::stod(fit[3]));
    EXPECT_GT(ratios.front(), 0.55);
    EXPECT_LT(ratios.back(), 1.20);
}

// Common practice, no source: a girth, a height and a spread that go together, and limbs neither
// stumpier than a fifteenth nor more whippy than a seventieth.
TEST_P(DrawnTree, HasLimbsOfBelievableProportions)
{
    const auto it = drawn(GetParam());
    EXPECT_GE(it.tree.limbs.size(), 12U);
    EXPECT_LE(it.tree.limbs.size(), 25U);
    for (std::size_t limb = 0; limb < it.tree.limbs.size(); ++limb) {
        const auto& each = it.tree.limbs[limb];
        if (limb == it.order.trunk)
            continue;
        const double slender = model::length_m(each) / each.stations.front().diameter_m;
        EXPECT_GT(slender, 15.0) << each.id;
        EXPECT_LT(slender, 70.0) << each.id;
        const auto& parent = it.tree.limbs[it.order.parent[limb]];
        const double ratio = each.stations.front().diameter_m /
                             model::axisPoint(parent, each.attachedAt_m).diameter_m;
        EXPECT_LE(ratio, 0.85) << each.id;
    }
    const double slenderness = model::height_m(it.tree) / model::stemDiameter_m(it.tree);
    EXPECT_GT(slenderness, 15.0);
    EXPECT_LT(slenderness, 50.0);
}

} // namespace
