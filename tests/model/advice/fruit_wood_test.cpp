#include "model/advice/fruit_wood.hpp"
#include "model/advice/suggestion.hpp"
#include "tests/model/advice/limb_from.hpp"
#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace model::advice {
namespace {

// Published: University of California, The Backyard Orchard, yearly pruning of bearing trees, share
// of last year's wood; from memory, as the table in fruit_wood.cpp.
TEST(FruitWood, IsRenewedByAHalfOnAPeachAndATenthToAFifthOnAnApple)
{
    const auto of = [](const char* latin) { return yearlyRenewal(latin); };
    EXPECT_DOUBLE_EQ(of("Prunus persica")->least, 0.40);
    EXPECT_DOUBLE_EQ(of("Prunus persica")->most, 0.50);
    EXPECT_DOUBLE_EQ(of("Malus domestica")->least, 0.10);
    EXPECT_DOUBLE_EQ(of("Malus domestica")->most, 0.20);
    EXPECT_DOUBLE_EQ(of("Prunus armeniaca")->most, 0.20);
    EXPECT_FALSE(of("Quercus robur").has_value());
}

// Law: all that a note is given for is in the species tables, by the name that it has there.
TEST(FruitWood, IsKnownOfFruitTreesAlone)
{
    int known = 0;
    for (const auto& species : shippedTables().species)
        if (renewalNote(species)) {
            ++known;
            EXPECT_TRUE(species.latin.starts_with("Prunus") || species.latin.starts_with("Malus") ||
                        species.latin.starts_with("Pyrus"))
                << species.latin;
        }
    EXPECT_EQ(known, 8);
}

// The same table: what is offered of a fruit tree's shoots lies within it, and speaks past it.
TEST(FruitWood, IsOfferedByTheUsualShares)
{
    const auto& apple = *findSpecies(shippedTables(), "Malus domestica");
    const auto offered = shootCuts(apple);
    EXPECT_EQ(offered.kind, CutKind::renewal);
    ASSERT_EQ(offered.steps.size(), 3u);
    EXPECT_NEAR(offered.steps.front(), 0.10, 1e-12);
    EXPECT_NEAR(offered.steps.back(), 0.20, 1e-12);
    EXPECT_EQ(shootCuts(*findSpecies(shippedTables(), "Quercus robur")).kind, CutKind::thinning);
    const auto note = [](const char* latin, double share) {
        return renewalShareNote(*findSpecies(shippedTables(), latin),
                                {CutKind::renewal, "limb", 0.0, {}, share, {}});
    };
    EXPECT_EQ(note("Prunus persica", 0.39)->severity, Severity::inform);
    EXPECT_FALSE(note("Prunus persica", 0.40).has_value());
    EXPECT_FALSE(note("Prunus persica", 0.50).has_value());
    EXPECT_EQ(note("Prunus persica", 0.51)->severity, Severity::warn);
}

/// A stem with three scaffold limbs and a shoot straight up between them.
Tree vase()
{
    Tree tree;
    tree.id = "tree";
    tree.species = "Prunus persica";
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.16, {}}, {{0, 0, 0.6}, 0.14, {}}};
    tree.limbs.push_back(trunk);
    for (int i = 0; i < 3; ++i) {
        const double turn = 2.0 * std::numbers::pi * i / 3.0;
        auto limb = limbFrom("scaffold" + std::to_string(i), trunk, 0.55,
                             {1.6 * std::cos(turn), 1.6 * std::sin(turn), 1.8}, 0.07);
        limb.foliage = Foliage{0.4, 0.6, 0.0, {}, FoliageDensity::medium, 0.0, {}};
        tree.limbs.push_back(limb);
    }
    auto upright = limbFrom("upright", tree.limbs[1], 0.3, {0.05, 0.0, 1.4}, 0.025);
    upright.foliage = Foliage{0.2, 0.3, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    tree.limbs.push_back(upright);
    return tree;
}

// Law: the upright limb between the scaffolds fills the middle, none of the scaffolds does; a
// peach is opened where that is asked for, an oak never.
TEST(OpenMiddle, TakesTheUprightLimbsOutOfAFruitTree)
{
    const Tree tree = vase();
    ASSERT_EQ(middleLimbs(tree), std::vector<std::size_t>{4});
    Garden garden;
    garden.trees = {tree};
    const auto& peach = *findSpecies(shippedTables(), tree.species);
    const auto foliation = foliate(tree, peach);
    const Aim open{.spare_m = 0.0,
                   .goals = {{GoalKind::openCentre, Want::must, "", {}, {}, {}}},
                   .around = nullptr};
    const auto date = std::chrono::year(2026) / 3 / 1;
    const auto plan = suggest(garden, tree, foliation, peach, date, open);
    ASSERT_EQ(plan.outcome, Outcome::met);
    ASSERT_EQ(plan.cuts.size(), 1u);
    EXPECT_EQ(plan.cuts[0].cut.limb, "upright");
    EXPECT_EQ(plan.cuts[0].notes.front().rule, Rule::openMiddle);
    EXPECT_EQ(plan.goals[0].state, GoalResult::State::met);
    EXPECT_EQ(plan.goals[0].before, 1.0);
    EXPECT_EQ(plan.goals[0].after, 0.0);
    auto oak = tree;
    oak.species = "Quercus robur";
    garden.trees = {oak};
    const auto other =
        suggest(garden, oak, foliation, *findSpecies(shippedTables(), oak.species), date, open);
    EXPECT_EQ(other.goals[0].state, GoalResult::State::leftAside);
    EXPECT_TRUE(other.cuts.empty());
}

// Law: where a limb is to bear less, a peach is renewed and not thinned.
TEST(FruitWood, IsWhatTheSearchTakesOfAFruitTreesShoots)
{
    Tree tree = vase();
    Garden garden;
    garden.designGust_m_s = 35.0;
    garden.trees = {tree};
    const auto& peach = *findSpecies(shippedTables(), tree.species);
    const auto foliation = foliate(tree, peach);
    const auto date = std::chrono::year(2026) / 3 / 1;
    const Aim look{.spare_m = 0.0,
                   .goals = {{GoalKind::relief, Want::wish, "scaffold0", 0.001, {}, {}}},
                   .around = nullptr};
    const double now = *suggest(garden, tree, foliation, peach, date, look).goals[0].before;
    const Aim ease{.spare_m = 0.0,
                   .goals = {{GoalKind::relief, Want::must, "scaffold0", 0.95 * now, {}, {}},
                             {GoalKind::keep, Want::must, "upright", {}, {}, {}}},
                   .around = nullptr};
    const auto plan = suggest(garden, tree, foliation, peach, date, ease);
    ASSERT_EQ(plan.outcome, Outcome::met);
    ASSERT_FALSE(plan.cuts.empty());
    for (const auto& cut : plan.cuts)
        EXPECT_NE(cut.cut.kind, CutKind::thinning);
    EXPECT_TRUE(std::ranges::any_of(
        plan.cuts, [](const auto& cut) { return cut.cut.kind == CutKind::renewal; }));
    EXPECT_TRUE(plan.binding.empty());
}

} // namespace
} // namespace model::advice
