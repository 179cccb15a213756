#include "model/advice/cleaning.hpp"

#include "model/advice/prune.hpp"
#include "tests/model/advice/asked_garden.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace model::advice {
namespace {

Defect mark(DefectKind kind, double at_m)
{
    Defect defect;
    defect.kind = kind;
    defect.at_m = at_m;
    return defect;
}

/// A stem with one long limb that carries a thick lateral, and one limb more.
Tree drawn()
{
    Tree tree = drawnStem();
    const Limb trunk = tree.limbs.front();
    auto limb = leafyLimbFrom("limb", trunk, 3.0, {3.0, 0, 0.5}, 0.08);
    auto lateral = leafyLimbFrom("lateral", limb, 1.5, {0, 1.0, 0.5}, 0.04);
    tree.limbs.push_back(std::move(limb));
    tree.limbs.push_back(std::move(lateral));
    tree.limbs.push_back(leafyLimbFrom("other", trunk, 3.5, {-2.5, 0, 0.5}, 0.06));
    return tree;
}

// Hamburg system (Dujesiefken & Stobbe 2002): of a dead branch only dead tissue is cut.
TEST(Cleaning, TakesDeadWoodBackToWhereItLives)
{
    Tree tree = drawn();
    tree.limbs[1].defects = {mark(DefectKind::dead, 2.0)};
    EXPECT_EQ(cleaningCuts(tree),
              (std::vector<Cut>{{CutKind::reduction, "limb", 2.0, {}, {}, {}}}));
    const Tree cleaned = afterCuts(tree, cleaningCuts(tree));
    EXPECT_TRUE(cleaned.limbs[1].defects.empty()) << "what is left is alive";
    EXPECT_NE(limbIndex(cleaned, "lateral"), kNoLimb);
    tree.limbs[1].defects = {mark(DefectKind::dead, 0.0)};
    EXPECT_EQ(cleaningCuts(tree), (std::vector<Cut>{{CutKind::removal, "limb", 0.0, {}, {}, {}}}));
    EXPECT_EQ(limbIndex(afterCuts(tree, cleaningCuts(tree)), "lateral"), kNoLimb)
        << "what grows from dead wood is dead";
}

TEST(Cleaning, TakesBrokenAndRubbingLimbsBackToASideBranchThatCanTakeOver)
{
    for (const auto kind : {DefectKind::broken, DefectKind::rubbing}) {
        Tree tree = drawn();
        tree.limbs[1].defects = {mark(kind, 2.5)};
        EXPECT_EQ(cleaningCuts(tree),
                  (std::vector<Cut>{{CutKind::reduction, "limb", 1.5, {}, {}, {}}}));
        tree.limbs[1].defects = {mark(kind, 1.0)}; // inside of its only lateral
        EXPECT_EQ(cleaningCuts(tree),
                  (std::vector<Cut>{{CutKind::removal, "limb", 0.0, {}, {}, {}}}));
    }
}

TEST(Cleaning, LeavesSoundTreesTheStemAndKeptLimbsAlone)
{
    Tree tree = drawn();
    EXPECT_TRUE(cleaningCuts(tree).empty());
    tree.limbs[1].defects = {mark(DefectKind::crack, 1.0), mark(DefectKind::cavity, 0.5)};
    EXPECT_TRUE(cleaningCuts(tree).empty()) << "an arborist's to judge";
    tree.limbs[0].defects = {mark(DefectKind::dead, 5.0)};
    EXPECT_TRUE(cleaningCuts(tree).empty());
    tree.limbs[1].defects = {mark(DefectKind::dead, 0.0)};
    EXPECT_TRUE(cleaningCuts(tree, {"limb"}).empty());
    EXPECT_TRUE(cleaningCuts(tree, {"lateral"}).empty());
    EXPECT_EQ(cleaningCuts(tree, {"other"}).size(), 1U);
}

// Law: what cleans comes first, is not counted as leaf, and the rest is what the cleaned tree asks.
TEST(Cleaning, ComesFirstAndIsNotCountedAsLeaf)
{
    std::mt19937 random(41);
    int both = 0;
    for (int i = 0; i < 12; ++i) {
        auto garden = randomGarden(random);
        auto& tree = garden.trees[0];
        tree.limbs.back().defects = {
            mark(i % 2 == 0 ? DefectKind::broken : DefectKind::rubbing, 0.0)};
        const auto gone = tree.limbs.back().id;
        garden.strips = {
            {"path", "", StripUse::path, {{-9, -1}, {9, -1}, {9, 1}, {-9, 1}}, 2.2, {}}};
        const Asked asked(garden);
        const auto plan = asked.suggest({});
        ASSERT_FALSE(plan.cuts.empty());
        EXPECT_TRUE(plan.cuts.front().cleans);
        EXPECT_EQ(plan.cuts.front().cut.limb, gone);
        EXPECT_EQ(plan.cuts.front().leafShare, 0.0);
        EXPECT_GT(plan.cuts.front().mass_kg, 0.0);
        EXPECT_TRUE(std::ranges::is_sorted(plan.cuts, std::greater{},
                                           [](const PlannedCut& cut) { return cut.cleans; }));
        EXPECT_LE(plan.leafShare, plan.allowance + 1e-9);
        Garden cleaned = garden;
        cleaned.trees[0] = afterCuts(tree, cleaningCuts(tree));
        const auto after =
            advice::suggest(cleaned, cleaned.trees[0], asked.foliation, *asked.species, kAskedOn,
                            {.spare_m = 0.0, .goals = {}, .around = &asked.around});
        EXPECT_NEAR(plan.leafShare, after.leafShare, 1e-9) << i;
        both += plan.cuts.size() > 1 ? 1 : 0;
    }
    EXPECT_GT(both, 0);
}

} // namespace
} // namespace model::advice
