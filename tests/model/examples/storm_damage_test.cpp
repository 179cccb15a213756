#include "tests/model/examples/example_files.hpp"
#include "tests/model/examples/sketched_tree.hpp"
#include "tests/outside/outside_check.hpp"

#include "model/load/breaking_gust.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>
#include <vector>

// The gusts in which whole trees lose limbs, against what storm surveyors read from broken trees.
// Published: Environment and Climate Change Canada, Enhanced Fujita scale, damage indicator C-T
// (trees): 3-second gust at 10 m in open country, expected (lower to upper bound), km/h: small
// limbs broken, up to 2 cm, 70 (55-85); large branches broken, 2-8 cm, 90 (65-110); up to 20 % of
// mature trees snapped or uprooted 115 (80-150); over 20 % 150 (105-190); over 50 % 190 (145-230).
// Read. Nothing in the model was fitted to it. (McDonald & Mehta 2006 is the scale's first
// edition.)
namespace {

using model::load::BreakingGust;

constexpr double kKmh_m_s = 1.0 / 3.6;

/// Chance that a limb with this range breaks in a gust: lognormal through its percentiles.
double chance(const BreakingGust& range, double gust_m_s)
{
    if (!range.hasStrength)
        return 1.0;
    const double spread = std::log(range.p50_m_s / range.p10_m_s) / 1.2816;
    const double z = std::log(gust_m_s / range.p50_m_s) / spread;
    return 0.5 * std::erfc(-z / std::sqrt(2.0));
}

struct Standing {
    std::string name;
    model::Tree tree;
    std::vector<BreakingGust> gusts;
};

Standing standing(const std::string& name, model::Tree tree)
{
    for (auto& limb : tree.limbs) {
        limb.fruit_kg = 0.0;
        limb.measured = model::Measured::taped; // what stands in a street has no measuring error
    }
    const auto& species = *model::findSpecies(shippedTables(), tree.species);
    auto gusts = model::load::breakingGusts(tree, foliate(tree, species), species, {},
                                            model::Exposure::scattered, {});
    return {name, std::move(tree), std::move(gusts)};
}

std::vector<Standing> stand()
{
    std::vector<Standing> all;
    for (const auto* name : kExamples)
        all.push_back(standing(name, example(name).trees.front()));
    const MeasuredTree kMeasured[] = {
        {"Acer saccharinum", 40.1, 12, 11.4, 0}, {"Acer platanoides", 38.6, 13.5, 11.6, 0},
        {"Betula pendula", 26.1, 9.5, 5.4, 0},   {"Tilia cordata", 72.9, 22, 11.2, 0},
        {"Quercus rubra", 15.2, 9, 6, 0},        {"Juglans nigra", 52.3, 19, 14, 0},
        {"Zelkova serrata", 36.6, 9, 12.1, 0},   {"Gleditsia triacanthos", 45, 14.5, 14.8, 0},
    };
    for (const auto& measured : kMeasured)
        all.push_back(standing(measured.species, sketchedTree(measured)));
    return all;
}

/// The gust in which it is as likely as not that some sound limb, 2 to 8 cm thick at its union,
/// breaks; limbs break each by itself. 80: none does.
double firstBranch_m_s(const Standing& tree)
{
    for (double gust = 5.0; gust < 80.0; gust += 0.1) {
        double none = 1.0;
        for (const auto& range : tree.gusts) {
            const auto& limb = tree.tree.limbs[range.limb];
            const double thick_m = limb.stations.front().diameter_m;
            if (limb.parent && thick_m >= 0.02 && thick_m <= 0.08 && limb.defects.empty())
                none *= 1.0 - chance(range, gust);
        }
        if (none < 0.5)
            return gust;
    }
    return 80.0;
}

double geometricMean(const std::vector<double>& values)
{
    double sum = 0.0;
    for (const double value : values)
        sum += std::log(value);
    return std::exp(sum / static_cast<double>(values.size()));
}

// The trees drawn by hand lie inside the surveyors' bounds. Those sketched by strokes miss the
// lower bound by up to a fifth (53 to 58 km/h, the birch 71), on the safe side: their limbs are as
// thick as the sketch's rule guesses, a fortieth of their length, and thirty limbs that each may be
// the weakest of their kind, with all the scatter of pulling tests, lose the first one early.
TEST(StormDamage, BreaksBranchesWhereSurveyorsExpectIt)
{
    std::vector<double> firsts;
    for (const auto& tree : stand()) {
        const double first_kmh = firstBranch_m_s(tree) / kKmh_m_s;
        std::cout << tree.name << ": first branch of 2-8 cm at " << first_kmh
                  << " km/h (surveyors 90, 65-110)\n";
        if (first_kmh > 285.0) // it has no limb of that size
            continue;
        firsts.push_back(first_kmh);
        if (firsts.size() <= kExamples.size()) {
            OUTSIDE_WITHIN(first_kmh, 65.0, 110.0) << tree.name;
            continue;
        }
        OUTSIDE_TOLD(first_kmh, 65.0, 110.0) << tree.name << ", sketched by strokes";
        EXPECT_GT(first_kmh, 0.8 * 65.0) << tree.name;
        EXPECT_LT(first_kmh, 110.0) << tree.name;
    }
    const double mean_kmh = geometricMean(firsts);
    std::cout << "mean " << mean_kmh << " km/h, " << mean_kmh / 90.0 << " of what is expected\n";
}

TEST(StormDamage, SnapsStemsWhereSurveyorsExpectIt)
{
    std::vector<double> fifths;
    std::vector<double> halves;
    for (const auto& tree : stand())
        for (const auto& range : tree.gusts)
            if (!tree.tree.limbs[range.limb].parent) {
                const double spread = std::log(range.p50_m_s / range.p10_m_s) / 1.2816;
                halves.push_back(range.p50_m_s);
                fifths.push_back(range.p50_m_s * std::exp(-0.8416 * spread));
                std::cout << tree.name << ": one stem in five at " << fifths.back() / kKmh_m_s
                          << " km/h, half at " << halves.back() / kKmh_m_s << '\n';
            }
    const double fifth_kmh = geometricMean(fifths) / kKmh_m_s;
    const double half_kmh = geometricMean(halves) / kKmh_m_s;
    std::cout << "mean: one in five " << fifth_kmh << " km/h (surveyors 115-150, 80-190), half "
              << half_kmh << " km/h (190, 145-230)\n";
    OUTSIDE_WITHIN(fifth_kmh, 80.0, 190.0);
    OUTSIDE_WITHIN(half_kmh, 145.0, 230.0);
}

// Common practice, no source: a fork with bark pressed in fails before the same one grown sound.
TEST(StormDamage, TakesTheWeakUnionFirst)
{
    auto tree = example("maple-drive").trees.front();
    const auto fork = limbIndex(tree, "west-stem");
    ASSERT_EQ(tree.limbs[fork].unionKind, model::Union::includedBark);
    const auto weak = standing("bark pressed in", tree).gusts[fork];
    tree.limbs[fork].unionKind = model::Union::sound;
    const auto sound = standing("sound", tree).gusts[fork];
    std::cout << "west stem: half break at " << weak.p50_m_s / kKmh_m_s << " km/h, grown sound at "
              << sound.p50_m_s / kKmh_m_s << '\n';
    EXPECT_LT(weak.p50_m_s, 0.95 * sound.p50_m_s);
}

} // namespace
