#include "model/advice/broken_rules.hpp"
#include "model/advice/crown_shape.hpp"
#include "model/advice/limits.hpp"
#include "model/advice/prune.hpp"
#include "model/advice/suggestion.hpp"
#include "tests/model/advice/limb_from.hpp"
#include "tests/model/examples/example_files.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace model::advice {
namespace {

using namespace std::chrono_literals;

constexpr auto kDate = 2026y / 2 / 1;

bool names(const std::vector<Finding>& findings, Rule rule)
{
    return std::ranges::find(findings, rule, &Finding::rule) != findings.end();
}

Cut removal(const std::string& limb)
{
    return {CutKind::removal, limb, 0.0, {}, {}, {}};
}

Cut reduction(const std::string& limb, double at_m)
{
    return {CutKind::reduction, limb, at_m, {}, {}, {}};
}

// Law: what is suggested, judged as if somebody else had thought of it, comes to the same.
TEST(Judge, SaysOfTheSuggestedCutsWhatTheSuggestionSays)
{
    for (const char* name : kExamples) {
        const auto garden = example(name);
        for (const auto& tree : garden.trees) {
            const auto& species = *findSpecies(shippedTables(), tree.species);
            const auto foliation = foliate(tree, species);
            const auto suggested = suggest(garden, tree, foliation, species, kDate);
            const auto judged = judge(garden, tree, foliation, species, kDate, cutsOf(suggested));
            EXPECT_EQ(judged.outcome, Outcome::met) << name;
            EXPECT_TRUE(judged.binding.empty()) << name;
            EXPECT_DOUBLE_EQ(judged.leafShare, suggested.leafShare);
            EXPECT_EQ(cutsOf(judged), cutsOf(suggested));
            ASSERT_EQ(judged.after.size(), suggested.after.size());
            for (std::size_t i = 0; i < judged.after.size(); ++i)
                EXPECT_EQ(judged.after[i].height_m, suggested.after[i].height_m);
        }
    }
}

// Law: a limb may be thinned and shortened in turn and then be taken off after all.
TEST(Judge, TakesALimbOffThatWasThinnedBefore)
{
    const auto garden = example(kExamples[0]);
    const auto& tree = garden.trees[0];
    const auto& species = *findSpecies(shippedTables(), tree.species);
    const auto& limb =
        *std::ranges::find_if(tree.limbs, [](const Limb& l) { return l.foliage && l.parent; });
    const auto judged = judge(garden, tree, foliate(tree, species), species, kDate,
                              {{CutKind::thinning, limb.id, 0.0, {}, 0.25, {}}, removal(limb.id)});
    ASSERT_EQ(judged.cuts.size(), 2U);
    EXPECT_EQ(judged.cuts.back().cut.kind, CutKind::removal);
}

// Closed form: two like limbs, east and west; without one of them the middle of wood and leaf lies
// in the middle of the other.
TEST(CrownShape, TellsHowFarACrownMovesAside)
{
    Tree tree;
    tree.species = "Malus domestica";
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.3, {}}, {{0, 0, 4}, 0.2, {}}};
    tree.limbs.push_back(trunk);
    for (const double side : {-1.0, 1.0}) {
        auto limb = limbFrom(side < 0 ? "west" : "east", trunk, 3.0, {side * 3.0, 0, 0}, 0.08);
        limb.foliage = Foliage{0.0, 0.5, 0.0, {}, FoliageDensity::medium, 0.0, {}};
        tree.limbs.push_back(limb);
    }
    const auto foliation = foliate(tree, *findSpecies(shippedTables(), tree.species));
    const auto before = crownShape(tree, foliation);
    const auto after = crownShape(afterCut(tree, removal("west")), foliation);
    OUTSIDE_NEAR(before.leafAside_m.x, 0.0, 1e-9);
    OUTSIDE_NEAR(before.woodAside_m.x, 0.0, 1e-9);
    OUTSIDE_NEAR(after.leafAside_m.x, 1.5, 1e-9);
    OUTSIDE_NEAR(movedAside(before, after) * before.reach_m, 1.5, 0.2);
    EXPECT_LT(movedAside(after, before), 0.0);
}

/// A stem with one thick level limb that carries a thin and a thick lateral.
Tree lateralTree()
{
    Tree tree;
    tree.id = "tree";
    tree.species = "Acer saccharinum";
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.4, {}}, {{0, 0, 9}, 0.2, {}}};
    trunk.foliage = Foliage{4.0, 2.5, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    auto limb = limbFrom("limb", trunk, 3.0, {4.0, 0, 0}, 0.10);
    limb.foliage = Foliage{1.0, 0.6, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    auto thin = limbFrom("thin", limb, 1.2, {0, 1.0, 0.5}, 0.015);
    thin.foliage = Foliage{0.2, 0.3, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    auto thick = limbFrom("thick", limb, 2.6, {0, -1.0, 0.8}, 0.04);
    thick.foliage = Foliage{0.2, 0.4, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    tree.limbs = {trunk, limb, thin, thick};
    return tree;
}

struct Drawn {
    Tree tree{lateralTree()};
    Foliation foliation{foliate(tree, *findSpecies(shippedTables(), tree.species))};
    [[nodiscard]] std::vector<Finding> broken(const std::vector<Cut>& cuts,
                                              double allowance = 0.25) const
    {
        return brokenRules(tree, foliation, *findSpecies(shippedTables(), tree.species), allowance,
                           cuts);
    }
};

// Each rule speaks just past its threshold (limits.hpp) and is silent just before.
TEST(BrokenRules, WantALateralOfAThirdWhereALimbIsShortened)
{
    const Drawn drawn;
    const auto& limb = drawn.tree.limbs[1];
    ASSERT_LT(drawn.tree.limbs[2].stations[0].diameter_m / axisPoint(limb, 1.2).diameter_m,
              kLateralLeast);
    ASSERT_GT(drawn.tree.limbs[3].stations[0].diameter_m / axisPoint(limb, 2.6).diameter_m,
              kLateralLeast);
    EXPECT_TRUE(names(drawn.broken({reduction("limb", 1.2)}), Rule::lateralThird));
    EXPECT_FALSE(names(drawn.broken({reduction("limb", 2.6)}), Rule::lateralThird));
    EXPECT_TRUE(names(drawn.broken({reduction("limb", 2.0)}), Rule::lateralThird)) << "a stub";
}

TEST(BrokenRules, KnowToppingAndWhatTakesTooMuchOfALimb)
{
    const Drawn drawn;
    EXPECT_TRUE(names(drawn.broken({reduction("trunk", 7.0)}), Rule::topping));
    EXPECT_TRUE(names(drawn.broken({reduction("limb", 1.2)}), Rule::limbShare));
    EXPECT_FALSE(names(drawn.broken({reduction("limb", 2.6)}), Rule::limbShare));
    EXPECT_FALSE(names(drawn.broken({removal("limb")}), Rule::limbShare)) << "a whole limb may go";
}

// Four conifer-pruning pages agree: bare wood of most conifers does not sprout (weak). The table
// rates the redwood's sprouting high.
TEST(BrokenRules, KeepTheSawOutOfTheBareWoodOfConifers)
{
    for (const auto& [latin, bare] :
         {std::pair("Pinus sylvestris", true), std::pair("Picea abies", true),
          std::pair("Sequoia sempervirens", false), std::pair("Acer saccharinum", false)}) {
        Drawn drawn;
        drawn.tree.species = latin;
        EXPECT_EQ(names(drawn.broken({reduction("limb", 0.9)}, 1.0), Rule::bareConifer), bare)
            << latin;
        EXPECT_FALSE(names(drawn.broken({reduction("limb", 2.6)}, 1.0), Rule::bareConifer));
    }
}

// Law: the inner of two side branches goes, and the limb has most of its leaf at its end.
TEST(BrokenRules, ForbidALionsTail)
{
    Drawn drawn;
    drawn.tree.limbs[1].foliage->from_m = 3.0;
    EXPECT_TRUE(names(drawn.broken({removal("thin"), removal("thick")}, 1.0), Rule::lionTail));
    EXPECT_FALSE(names(drawn.broken({removal("limb")}, 1.0), Rule::lionTail));
}

TEST(BrokenRules, HoldTheLeafAgainstTheAllowance)
{
    const Drawn drawn;
    const std::vector<Cut> cuts{{CutKind::thinning, "trunk", 0.0, {}, 0.2, {}}};
    const auto broken = drawn.broken(cuts, 0.0);
    ASSERT_TRUE(names(broken, Rule::seasonShare));
    const double share = *std::ranges::find(broken, Rule::seasonShare, &Finding::rule)->found;
    EXPECT_FALSE(names(drawn.broken(cuts, share + 1e-6), Rule::seasonShare));
    EXPECT_TRUE(names(drawn.broken(cuts, share - 1e-6), Rule::seasonShare));
}

TEST(BrokenRules, LetDeadWoodGo)
{
    Drawn drawn;
    drawn.tree.limbs[1].defects.push_back({DefectKind::dead, 0.5, {}, {}, {}, {}, {}});
    EXPECT_TRUE(drawn.broken({reduction("limb", 1.2)}, 1.0).empty());
}

TEST(MadeInTurn, LeavesOutWhatAnEarlierCutHasTaken)
{
    const auto tree = lateralTree();
    const std::vector<Cut> cuts{removal("limb"),        removal("thin"),   removal("trunk"),
                                reduction("limb", 1.0), removal("nobody"), removal("limb")};
    EXPECT_EQ(madeInTurn(tree, cuts), std::vector<Cut>{removal("limb")});
    EXPECT_NO_THROW((void)afterCuts(tree, madeInTurn(tree, cuts)));
    const std::vector<Cut> shorter{reduction("limb", 2.0), removal("thick"), reduction("limb", 1.0),
                                   removal("thin")};
    EXPECT_EQ(madeInTurn(tree, shorter),
              (std::vector<Cut>{reduction("limb", 2.0), removal("thin")}));
}

} // namespace
} // namespace model::advice
