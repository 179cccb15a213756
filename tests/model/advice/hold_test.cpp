#include "model/advice/hold.hpp"

#include "model/garden/tree.hpp"

#include <gtest/gtest.h>

namespace model::advice {
namespace {

using namespace std::chrono_literals;

/// A tree whose one limb lets its shoots hang to 1.2 m over a path.
Garden hangingGarden()
{
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.30, {}}, {{0, 0, 9}, 0.10, {}}};
    trunk.foliage = Foliage{4.0, 1.6, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    Limb limb;
    limb.id = "limb";
    limb.parent = "trunk";
    limb.attachedAt_m = 3.5;
    limb.stations = {{{0, 0, 3.5}, 0.09, {}}, {{4, 0, 4.0}, 0.03, {}}};
    limb.foliage = Foliage{1.0, 0.4, 2.2, {}, FoliageDensity::medium, 0.0, {}};
    Tree tree;
    tree.id = "tree";
    tree.limbs = {trunk, limb};
    Garden garden;
    garden.place = {51.5, 0.0, 50.0, "Europe/London"};
    garden.trees = {tree};
    garden.strips = {{"path", "", StripUse::path, {{2, -3}, {3, -3}, {3, 3}, {2, 3}}, 2.1, {}}};
    return garden;
}

Species anySpecies()
{
    Species species;
    species.wood.basicSpecificGravity.value = 0.5;
    species.wood.limbDensity_kg_m3.value = 900.0;
    species.wood.greenMoe_Pa.value = 9e9;
    species.practice.shootLow_m = 0.5;
    species.practice.shootHigh_m = 1.0;
    return species;
}

std::vector<Hold> holdsOf(const Garden& garden)
{
    const auto species = anySpecies();
    const auto& tree = garden.trees[0];
    const auto foliation = foliate(tree, species);
    constexpr auto kDay = 2026y / 6 / 1;
    return holds(garden, tree, foliation, species, kDay, {},
                 suggest(garden, tree, foliation, species, kDay));
}

// Law: who cuts higher takes more and holds longer.
TEST(Holds, CostMoreLeafAndLastLonger)
{
    const auto all = holdsOf(hangingGarden());
    ASSERT_GE(all.size(), 3U);
    for (std::size_t i = 1; i < all.size(); ++i) {
        EXPECT_GT(all[i].spare_m, all[i - 1].spare_m);
        if (all[i].outcome != Outcome::met)
            continue;
        EXPECT_GT(all[i].leafShare, all[i - 1].leafShare);
        ASSERT_TRUE(all[i].first && all[i].first->middle);
        EXPECT_GT(*all[i].first->middle, *all[i - 1].first->middle);
        EXPECT_GE(all[i].first->spare_m, all[i].spare_m - 2e-4);
    }
}

TEST(Holds, EndWhereTheGuidelineDoes)
{
    auto garden = hangingGarden();
    garden.trees[0].vigour = Vigour::stressed; // a tenth of the leaf, and no more
    const auto all = holdsOf(garden);
    for (std::size_t i = 0; i + 1 < all.size(); ++i)
        EXPECT_EQ(all[i].outcome, Outcome::met);
}

TEST(Holds, PassOverWhatTheSameCutsLeaveAnyway)
{
    auto garden = hangingGarden();
    garden.trees[0].limbs[1].foliage->hanging_m = 0.0; // high and stiff: nothing to cut
    const auto all = holdsOf(garden);
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].outcome, Outcome::nothingNeeded);
}

TEST(Holds, AreNoneForATreeOverNoStrip)
{
    auto garden = hangingGarden();
    garden.strips.clear();
    EXPECT_TRUE(holdsOf(garden).empty());
}

// The aim's spare is asked of the cuts, not shown as a need.
TEST(Suggestion, LeavesTheSpareThatWasAskedFor)
{
    const auto garden = hangingGarden();
    const auto species = anySpecies();
    const auto& tree = garden.trees[0];
    const auto foliation = foliate(tree, species);
    const auto plain = suggest(garden, tree, foliation, species, 2026y / 6 / 1);
    Aim aim;
    aim.spare_m = 0.3;
    const auto roomy = suggest(garden, tree, foliation, species, 2026y / 6 / 1, aim);
    ASSERT_EQ(roomy.outcome, Outcome::met);
    EXPECT_DOUBLE_EQ(roomy.after[0].needed_m, 2.1);
    // Shoots are cut higher by as much as the limb sinks when wet, to a full centimetre, and a cut
    // limb sinks less than before.
    constexpr double kSunkLess_m = 0.06;
    EXPECT_NEAR(*roomy.after[0].height_m - *plain.after[0].height_m, 0.3, 0.0101);
    EXPECT_GE(roomy.regrowth.at(0).spare_m, 0.3 - 2e-4);
    EXPECT_LE(roomy.regrowth.at(0).spare_m, 0.3 + kSunkLess_m);
}

} // namespace
} // namespace model::advice
