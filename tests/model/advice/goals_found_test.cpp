#include "model/advice/prune.hpp"
#include "model/advice/suggestion.hpp"
#include "model/load/limb_load.hpp"
#include "tests/model/examples/example_files.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>

/// Goals that ask much of many limbs at once, where good sets of cuts are hard to come upon.
namespace model::advice {
namespace {

using namespace std::chrono_literals;

// Brute force: the cuts that are found, made and reckoned afresh. At 85 % and 76 % of the strength
// the search once came upon no cuts at all, though there are.
TEST(Goals, MuchReliefOfManyLimbsIsFound)
{
    const auto garden = example("maple-drive");
    const auto& tree = garden.trees[0];
    const auto& species = *findSpecies(shippedTables(), tree.species);
    const auto foliation = foliate(tree, species);
    for (const double most : {0.85, 0.76}) {
        const auto found = suggest(garden, tree, foliation, species, 2026y / 7 / 1,
                                   {.spare_m = 0.0,
                                    .goals = {{GoalKind::relief, Want::must, "", most, {}, {}}},
                                    .around = nullptr});
        ASSERT_EQ(found.outcome, Outcome::met) << most;
        EXPECT_LE(found.leafShare, found.allowance + 1e-9);
        EXPECT_LE(found.leafBound, found.leafShare + 1e-9);
        load::Conditions storm;
        storm.gust_m_s = garden.designGust_m_s;
        double worst = 0.0;
        for (const auto& limb : load::treeLoad(afterCuts(tree, cutsOf(found)), foliation, species,
                                               garden.place, garden.exposure, storm)
                                    .limbs)
            if (limb.hasStrength)
                worst = std::max(worst, limb.utilisation);
        OUTSIDE_WITHIN(worst, 0.0, most + 1e-6) << "relief to " << most;
    }
}

} // namespace
} // namespace model::advice
