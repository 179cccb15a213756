#include "model/advice/prune.hpp"
#include "model/advice/single_cuts.hpp"

#include <gtest/gtest.h>

#include <algorithm>

using namespace model;
using namespace model::advice;

namespace {

Limb limb(const std::string& id, const std::string& parent, double at_m, Vec3 from, Vec3 to,
          double thick_m)
{
    Limb made;
    made.id = id;
    if (!parent.empty())
        made.parent = parent;
    made.attachedAt_m = at_m;
    made.stations = {{from, thick_m}, {to, thick_m / 2.0}};
    made.foliage.emplace();
    made.foliage->from_m = 0.5;
    made.foliage->radius_m = 0.5;
    return made;
}

/// A stem; a scaffold with a stout lateral, a thin one and a bare one.
Tree scaffolded()
{
    Tree tree;
    tree.limbs = {limb("stem", "", 0.0, {0, 0, 0}, {0, 0, 6}, 0.3),
                  limb("scaffold", "stem", 2.0, {0, 0, 2}, {4, 0, 4}, 0.12),
                  limb("stout", "scaffold", 2.0, {1.8, 0, 2.9}, {1.8, 2, 3.5}, 0.05),
                  limb("thin", "scaffold", 3.0, {2.7, 0, 3.35}, {2.7, 1, 3.5}, 0.015),
                  limb("bare", "scaffold", 1.0, {0.9, 0, 2.45}, {0.9, 1, 3}, 0.06)};
    tree.limbs.back().foliage.reset();
    return tree;
}

bool holds(const std::vector<Cut>& cuts, CutKind kind, const std::string& id)
{
    return std::ranges::any_of(cuts,
                               [&](const Cut& cut) { return cut.kind == kind && cut.limb == id; });
}

} // namespace

TEST(SingleCuts, TakeOffEveryLimbButTheTrunk)
{
    const auto cuts = singleCuts(scaffolded());
    for (const char* id : {"scaffold", "stout", "thin", "bare"})
        EXPECT_TRUE(holds(cuts, CutKind::removal, id)) << id;
    EXPECT_FALSE(holds(cuts, CutKind::removal, "stem"));
    EXPECT_FALSE(holds(cuts, CutKind::reduction, "stem"));
}

// Law: a lateral takes over if it has leaf and a third of the cut's diameter.
TEST(SingleCuts, ShortenToALateralThatCanTakeOver)
{
    const auto cuts = singleCuts(scaffolded());
    std::vector<double> places;
    for (const auto& cut : cuts)
        if (cut.kind == CutKind::reduction)
            places.push_back(cut.at_m);
    EXPECT_EQ(places, std::vector<double>{2.0});
}

TEST(SingleCuts, ThinWhatHasLeafAndLiftWhatHangs)
{
    auto tree = scaffolded();
    EXPECT_FALSE(holds(singleCuts(tree), CutKind::lifting, "scaffold"));
    tree.limbs[1].foliage->hanging_m = 1.0;
    tree.limbs[2].foliage->thinned = 0.25;
    const auto cuts = singleCuts(tree);
    EXPECT_TRUE(holds(cuts, CutKind::thinning, "scaffold"));
    EXPECT_TRUE(holds(cuts, CutKind::thinning, "stem"));
    EXPECT_FALSE(holds(cuts, CutKind::thinning, "stout")); // has been
    EXPECT_FALSE(holds(cuts, CutKind::thinning, "bare"));
    tree.species = "Malus domestica";
    EXPECT_TRUE(holds(singleCuts(tree), CutKind::renewal, "scaffold"));
    EXPECT_FALSE(holds(singleCuts(tree), CutKind::thinning, "scaffold"));
    const auto lift = std::ranges::find(cuts, CutKind::lifting, &Cut::kind);
    ASSERT_NE(lift, cuts.end());
    EXPECT_GT(*lift->height_m, 1.0);
    EXPECT_LT(*lift->height_m, 4.0);
}

// Law: each of them can be made.
TEST(SingleCuts, CanAllBeMade)
{
    auto tree = scaffolded();
    tree.limbs[1].foliage->hanging_m = 1.0;
    for (const auto& cut : singleCuts(tree))
        EXPECT_NO_THROW((void)afterCut(tree, cut)) << cut.limb;
}
