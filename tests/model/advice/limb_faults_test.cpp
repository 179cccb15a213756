#include "model/advice/limb_faults.hpp"

#include "model/advice/limits.hpp"
#include "model/advice/prune.hpp"
#include "model/advice/suggestion.hpp"
#include "model/advice/tail_limits.hpp"
#include "tests/model/advice/asked_garden.hpp"
#include "tests/model/advice/drawn_garden.hpp"
#include "tests/model/advice/limb_from.hpp"
#include "tests/model/advice/lion_tail_by_hand.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace model::advice {
namespace {

Tree stem()
{
    Tree tree;
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.30, {}}, {{0, 0, 6}, 0.10, {}}};
    tree.limbs = {trunk};
    return tree;
}

Foliage leaf(double from_m)
{
    return Foliage{from_m, 0.3, 0.0, {}, FoliageDensity::medium, 0.0, {}};
}

bool says(const std::vector<Finding>& findings, Rule rule)
{
    return std::ranges::find(findings, rule, &Finding::rule) != findings.end();
}

// Closed form: two level limbs cross at right angles, their axes so far apart in height that their
// wood leaves this gap.
Tree crossing(double gap_m)
{
    Tree tree = stem();
    Limb one = limbFrom("one", tree.limbs[0], 2.0, {3, 0, 0}, 0.06);
    Limb other = limbFrom("other", tree.limbs[0], 3.0, {0, 2, 0}, 0.04);
    one.stations[1].diameter_m = 0.06;
    other.stations[1].diameter_m = 0.04;
    Limb lateral = limbFrom("lateral", other, 2.0, {2, -4, 0}, 0.04);
    lateral.stations[0].position_m = {0.0, 2.0, 2.0 + 0.05 + gap_m};
    lateral.stations[1] = {{2.0, -2.0, 2.0 + 0.05 + gap_m}, 0.04, {}};
    tree.limbs.insert(tree.limbs.end(), {one, other, lateral});
    return tree;
}

TEST(RubbingLimbs, AreThoseThatComeNearAwayFromTheirFork)
{
    const auto near = rubbingLimbs(crossing(kRubbing_m - 0.002));
    ASSERT_EQ(near.size(), 1U);
    EXPECT_EQ(near[0].thinner, 3U);
    EXPECT_EQ(near[0].other, 1U);
    EXPECT_NEAR(near[0].gap_m, kRubbing_m - 0.002, 1e-6);
    EXPECT_TRUE(rubbingLimbs(crossing(kRubbing_m + 0.002)).empty());
}

TEST(RubbingLimbs, AreNoneAtAForkOrAmongDeadWood)
{
    Tree tree = stem();
    tree.limbs.push_back(limbFrom("a", tree.limbs[0], 2.0, {2, 0, 1}, 0.06));
    tree.limbs.push_back(limbFrom("b", tree.limbs[0], 2.0, {2, 1, 1}, 0.06));
    EXPECT_TRUE(rubbingLimbs(tree).empty());
    auto dead = crossing(0.0);
    Defect defect;
    defect.kind = DefectKind::dead;
    dead.limbs[3].defects = {defect};
    EXPECT_TRUE(rubbingLimbs(dead).empty());
}

/// A limb with two like side branches, one inside and one near its end, and no leaf of its own.
Tree forked()
{
    Tree tree = stem();
    const Limb limb = limbFrom("limb", tree.limbs[0], 2.0, {3, 0, 0}, 0.08);
    for (const double at_m : {1.0, 2.8}) {
        Limb side = limbFrom(at_m < 2.0 ? "inner" : "outer", limb, at_m, {0, 1, 0}, 0.03);
        side.foliage = leaf(0.2);
        tree.limbs.push_back(side);
    }
    tree.limbs.insert(tree.limbs.begin() + 1, limb);
    return tree;
}

// Closed form: two like side branches, half of the leaf on either.
TEST(LionTail, SpeaksWhenInnerSideBranchesAreStripped)
{
    const Tree tree = forked();
    Foliation foliation;
    foliation.leafPerSharingVolume_1_m = 1.0;
    const auto shares = innerLeafShares(tree, foliation);
    EXPECT_NEAR(shares[1], 0.5, 1e-12);
    EXPECT_TRUE(lionTails(tree, shares, tree, foliation).empty());
    const auto without = [&](const char* id) {
        return lionTails(tree, shares, afterCut(tree, {CutKind::removal, id, 0.0, {}, {}, {}}),
                         foliation);
    };
    ASSERT_EQ(without("inner").size(), 1U);
    EXPECT_EQ(without("inner")[0].severity, Severity::block);
    EXPECT_EQ(without("inner")[0].subject, "limb");
    EXPECT_TRUE(without("outer").empty());
}

// Closed form: cut back to the inner side branch, all of its leaf is inside; bare wood cut off its
// tip changes nothing.
TEST(LionTail, MayBeKeptFromByShorteningButNotByBareWood)
{
    const Tree tree = forked();
    Foliation foliation;
    foliation.leafPerSharingVolume_1_m = 1.0;
    const auto tailsAfter = [&](const std::vector<Cut>& cuts) {
        return lionTails(tree, innerLeafShares(tree, foliation), afterCuts(tree, cuts), foliation);
    };
    const Cut inner{CutKind::removal, "inner", 0.0, {}, {}, {}};
    EXPECT_TRUE(tailsAfter({{CutKind::reduction, "limb", 1.0, {}, {}, {}}}).empty());
    EXPECT_EQ(tailsAfter({inner, {CutKind::reduction, "limb", 2.8, {}, {}, {}}}).size(), 1U);
}

// Brute force: own leaf laid out in short steps, side branches summed one by one.
TEST(LionTail, SharesAreThoseLaidOutByHand)
{
    std::mt19937 random(3);
    for (int i = 0; i < 20; ++i) {
        const auto garden = randomGarden(random);
        const auto& tree = garden.trees[0];
        Foliation foliation;
        foliation.leafPerSharingVolume_1_m = 1.0;
        const auto shares = innerLeafShares(tree, foliation);
        for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb)
            OUTSIDE_NEAR(shares[limb],
                         innerShareByHand(tree, foliation, limb, length_m(tree.limbs[limb])), 2e-4)
                << "leaf on the inner two thirds";
    }
}

/// Two level limbs; over a path, the inner side branch of one.
Garden overPath(Tree tree)
{
    tree.id = "tree";
    tree.limbs[0].foliage = Foliage{4.2, 1.5, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    Garden garden;
    garden.trees = {std::move(tree)};
    garden.strips = {
        {"path", "", StripUse::path, {{0.5, 0.3}, {1.5, 0.3}, {1.5, 2}, {0.5, 2}}, 2.2, {}}};
    return garden;
}

Suggestion askedOf(const Garden& garden)
{
    const Species species = *findSpecies(shippedTables(), "Acer saccharinum");
    return suggest(garden, garden.trees[0], foliate(garden.trees[0], species), species,
                   std::chrono::year(2026) / 1 / 15);
}

// Law: the search would strip the inside of a limb that hangs over a path, were it not for the
// rule.
TEST(LionTail, IsNeverSuggested)
{
    const auto garden = overPath(forked());
    const auto& tree = garden.trees[0];
    const Species species = *findSpecies(shippedTables(), "Acer saccharinum");
    const auto foliation = foliate(tree, species);
    const auto stripped = judge(garden, tree, foliation, species, std::chrono::year(2026) / 1 / 15,
                                {{CutKind::removal, "inner", 0.0, {}, {}, {}}});
    EXPECT_TRUE(says(stripped.binding, Rule::lionTail));
    const auto plan = askedOf(garden);
    EXPECT_EQ(plan.outcome, Outcome::met);
    EXPECT_TRUE(
        lionTails(tree, innerLeafShares(tree, foliation), afterCuts(tree, cutsOf(plan)), foliation)
            .empty());
}

// Closed form: of two side branches inside and two outside, all alike, one inside is in the way.
// Half of what is left is inside again if one outside goes too, and no less will do.
TEST(LionTail, IsKeptFromByCuttingBackTheEndAsWell)
{
    Tree tree = forked();
    const Limb limb = tree.limbs[1];
    for (const double at_m : {0.6, 2.4}) {
        Limb side = limbFrom(at_m < 2.0 ? "still" : "far", limb, at_m, {0, -1, 0}, 0.03);
        side.foliage = leaf(0.2);
        tree.limbs.push_back(side);
    }
    const auto plan = askedOf(overPath(tree));
    ASSERT_EQ(plan.outcome, Outcome::met);
    EXPECT_TRUE(plan.proven);
    ASSERT_EQ(plan.cuts.size(), 2U);
    for (const auto& cut : plan.cuts) {
        const bool inside = cut.cut.limb == "inner";
        EXPECT_NEAR(cut.leafShare, plan.leafShare / 2.0, 1e-9);
        EXPECT_EQ(says(cut.notes, Rule::lionTail), !inside) << cut.cut.limb;
    }
}

// Law: sets of options keep the limits that add up if and only if the cut tree, looked at by
// itself, has no lion's tail.
TEST(TailLimits, AreKeptByTheSetsThatLeaveNoLionTail)
{
    std::mt19937 random(41);
    int tails = 0;
    int none = 0;
    for (int i = 0; i < 40; ++i) {
        Tree tree = drawnGarden(random).trees[0];
        for (auto& limb : tree.limbs) // so that much of the leaf is on side branches
            if (limb.foliage && limb.id.back() != 'a')
                limb.foliage->from_m = 0.6 * length_m(limb);
        const auto foliation = foliate(tree, *findSpecies(shippedTables(), tree.species));
        const auto decisions = options(tree, foliation, everything());
        const LimbStates states(tree, foliation, decisions);
        const auto limits = tailLimits(tree, foliation, states).limits;
        const auto shares = innerLeafShares(tree, foliation);
        for (int drawn = 0; drawn < 40; ++drawn) {
            const auto set = drawnSet(random, decisions);
            if (!set)
                continue;
            const bool kept = std::ranges::all_of(limits, [&](const Limit& limit) {
                double takes = 0.0;
                for (const auto option : set->options)
                    takes += limit.takes[option];
                return takes <= limit.most;
            });
            const bool tail =
                !lionTails(tree, shares, afterCuts(tree, set->cuts), foliation).empty();
            ASSERT_EQ(kept, !tail) << i << ' ' << drawn;
            (tail ? tails : none) += 1;
        }
    }
    EXPECT_GT(tails, 50);
    EXPECT_GT(none, 50);
}

} // namespace
} // namespace model::advice
