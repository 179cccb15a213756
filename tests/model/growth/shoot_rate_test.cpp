#include "model/growth/shoot_rate.hpp"
#include "tests/outside/outside_check.hpp"

#include "model/growth/shoot_season.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace model::growth {
namespace {

using namespace std::chrono_literals;

const Place kEngland{51.5, 0.0, 50.0, "Europe/London"};

Species anySpecies()
{
    Species species;
    species.practice.shootLow_m = 0.4;
    species.practice.shootHigh_m = 1.0;
    species.practice.shootPattern = ShootPattern::longSeason;
    return species;
}

Tree hangingTree()
{
    Tree tree;
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.3, {}}, {{0, 0, 6}, 0.1, {}}};
    trunk.foliage = Foliage{3.0, 1.0, 1.5, {}, FoliageDensity::medium, 0.0, {}};
    tree.limbs = {trunk};
    return tree;
}

Visit visit(std::chrono::year_month_day date, std::optional<double> before_m,
            std::optional<double> after_m)
{
    Visit one;
    one.date = date;
    one.headroom = {{"path", before_m, after_m, {}}};
    if (after_m)
        one.cuts = {{CutKind::lifting, "trunk", 0.0, *after_m, {}, {}}};
    return one;
}

TEST(ShootRate, IsTheMiddleOfTheSpeciesRangeWithoutADiary)
{
    const auto rate = shootRate(hangingTree(), anySpecies(), kEngland, 0.0);
    EXPECT_DOUBLE_EQ(rate.mean_m, 0.7);
    EXPECT_EQ(rate.measurements, 0);
    // Closed form: the ends of the range are a tenth and nine tenths; a fifth from year to year.
    EXPECT_NEAR(rate.spread_m, std::hypot(0.6 / 2.563, 0.2 * 0.7), 1e-12);
}

// Law. Direction: Follett et al. 2016, Arboriculture and Urban Forestry 42: 133-145, and Perrette
// et al. 2020, 46: 432-449 (abstracts): longer shoots after harder cuts.
TEST(ShootRate, RisesWithTheCutToTheUpperEndAndFallsWithWeakness)
{
    double before = 0.0;
    for (const double taken : {0.0, 0.1, 0.2, 0.25}) {
        const double mean = shootRate(hangingTree(), anySpecies(), kEngland, taken).mean_m;
        EXPECT_GT(mean, before);
        before = mean;
    }
    EXPECT_DOUBLE_EQ(before, 1.0);
    auto old = hangingTree();
    old.vigour = Vigour::old;
    EXPECT_DOUBLE_EQ(shootRate(old, anySpecies(), kEngland, 0.0).mean_m, 0.35);
}

// Closed form: one measurement of a normal mean with a normal prior (any textbook of Bayesian
// statistics): precisions add, and the mean is weighted by them.
TEST(ShootRate, MovesWithOneMeasurementAsTheNormalPriorSays)
{
    auto tree = hangingTree();
    tree.visits = {visit(2024y / 1 / 10, 1.9, 2.6), visit(2025y / 1 / 10, 2.1, 2.6)};
    const auto rate = shootRate(tree, anySpecies(), kEngland, 0.0);
    const double prior = 0.6 / 2.563;
    const double scatter = std::hypot(0.10, 0.2 * 0.7);
    const double precision = 1 / (prior * prior) + 1 / (scatter * scatter);
    const double mean = (0.7 / (prior * prior) + 0.5 / (scatter * scatter)) / precision;
    EXPECT_EQ(rate.measurements, 1);
    OUTSIDE_NEAR(rate.mean_m, mean, 1e-9);
    OUTSIDE_NEAR(rate.spread_m, std::hypot(std::sqrt(1 / precision), 0.2 * mean), 1e-9);
    EXPECT_DOUBLE_EQ(rate.speciesMean_m, 0.7);
}

// Law: a long diary outweighs the species.
TEST(ShootRate, ComesToThisTreesOwnRate)
{
    auto tree = hangingTree();
    for (int y = 2000; y < 2025; ++y)
        tree.visits.push_back(
            visit(std::chrono::year{y} / 1 / 10, y == 2000 ? 2.0 : 2.6 - 0.45, 2.6));
    const auto rate = shootRate(tree, anySpecies(), kEngland, 0.0);
    EXPECT_EQ(rate.measurements, 24);
    EXPECT_NEAR(rate.mean_m, 0.45, 0.01);
}

TEST(ShootRate, LearnsFromVisitsInAnyOrderAndFromATapeAlone)
{
    auto tree = hangingTree();
    tree.visits = {visit(2025y / 1 / 10, 2.0, {}), visit(2024y / 1 / 10, 2.4, {}),
                   visit(2023y / 1 / 10, 1.9, 2.9)};
    EXPECT_EQ(shootRate(tree, anySpecies(), kEngland, 0.0).measurements, 2);
}

TEST(ShootRate, DoesNotLearnAcrossACutThatNobodyMeasured)
{
    auto tree = hangingTree();
    Visit cut;
    cut.date = 2024y / 6 / 1;
    cut.cuts = {{CutKind::lifting, "trunk", 0.0, 2.5, {}, {}}};
    tree.visits = {visit(2024y / 1 / 10, 1.9, 2.6), cut, visit(2025y / 1 / 10, 2.1, 2.6)};
    EXPECT_EQ(shootRate(tree, anySpecies(), kEngland, 0.0).measurements, 0);
}

TEST(ShootRate, DoesNotLearnFromTwoVisitsInOneWinter)
{
    auto tree = hangingTree();
    tree.visits = {visit(2024y / 11 / 10, 1.9, 2.6), visit(2025y / 2 / 10, 2.1, 2.6)};
    EXPECT_EQ(shootRate(tree, anySpecies(), kEngland, 0.0).measurements, 0);
}

} // namespace
} // namespace model::growth
