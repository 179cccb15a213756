#include "model/advice/light_goals.hpp"
#include "model/advice/prune.hpp"
#include "model/growth/grown.hpp"
#include "model/load/breaking_gust.hpp"
#include "model/load/limb_load.hpp"
#include "tests/model/advice/asked_garden.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace model::advice {
namespace {

// The gust in which the weakest limb is expected to break (L22) and the share of its strength that
// a gust asks of it (L21) are two ways to say the same.
TEST(Goals, TellTheGustThatTheWeakestLimbBreaksIn)
{
    std::mt19937 random(32);
    for (int i = 0; i < 5; ++i) {
        const Asked asked(randomGarden(random));
        const auto plain = asked.suggest({{GoalKind::gust, Want::wish, "", 0.5, {}, {}}});
        ASSERT_TRUE(plain.goals[0].before.has_value());
        load::Conditions storm;
        storm.gust_m_s = *plain.goals[0].before;
        if (storm.gust_m_s >= load::kGreatestGust_m_s)
            continue;
        const auto loads = load::treeLoad(asked.tree(), asked.foliation, *asked.species,
                                          asked.garden.place, asked.garden.exposure, storm);
        const auto limb = limbIndex(asked.tree(), plain.goals[0].worstLimb);
        EXPECT_NEAR(loads.limbs[limb].utilisation, 1.0, 0.02) << i;
    }
}

// Law: on the middle day a middling tree has grown just so far that the bed has the light that was
// wanted (A16); how far that is found here by growing it centimetre by centimetre.
TEST(Goals, LightIsLostOnTheDayThatTheTreeHasGrownSoFar)
{
    std::mt19937 random(34);
    int dated = 0;
    for (int i = 0; i < 8; ++i) {
        const Asked asked(randomGarden(random));
        const LightGoals light(asked.garden, asked.tree(), asked.around, kAskedOn.year(),
                               {{0, 24.0, {6, 7}, false}});
        const double wanted = std::lerp(light.now()[0], light.without()[0], 0.1);
        const auto plan = asked.suggest({{GoalKind::light, Want::must, "bed", wanted, {6, 7}, {}}});
        const auto& goal = plan.goals[0];
        if (goal.state != GoalResult::State::met || !goal.lost || !goal.lost->middle)
            continue;
        const Tree cut = afterCuts(asked.tree(), cutsOf(plan));
        double shoot_m = 0.0;
        while (light.light(growth::grown(cut, shoot_m + 0.01))[0] >= wanted - 1e-6)
            shoot_m += 0.01;
        const auto rate =
            growth::shootRate(asked.tree(), *asked.species, asked.garden.place, plan.leafShare);
        const auto day = [&](double grown_m) {
            return std::chrono::sys_days{*growth::grownOn(grown_m, rate,
                                                          asked.species->practice.shootPattern,
                                                          asked.garden.place, kAskedOn)
                                              .middle};
        };
        ++dated;
        EXPECT_GE(std::chrono::sys_days{*goal.lost->middle}, day(std::max(0.0, shoot_m - 0.03)));
        EXPECT_LE(std::chrono::sys_days{*goal.lost->middle}, day(shoot_m + 0.03));
        EXPECT_LE(std::chrono::sys_days{*goal.lost->early},
                  std::chrono::sys_days{*goal.lost->middle});
    }
    EXPECT_GT(dated, 0);
}

// Law: the bound that is told on the way never falls, and never exceeds what is found.
TEST(Goals, TellHowFarTheSearchIs)
{
    std::mt19937 random(35);
    int told = 0;
    for (int i = 0; i < 5; ++i) {
        const Asked asked(randomGarden(random));
        double last = 0.0;
        const auto tell = [&](double best, double bound) {
            ++told;
            EXPECT_GE(bound, last - 1e-9);
            EXPECT_LE(bound, best + 1e-9);
            last = bound;
        };
        const Aim aim{.spare_m = 0.0,
                      .goals = {{GoalKind::relief, Want::must, "", 0.4, {}, {}}},
                      .around = &asked.around};
        const auto found = advice::suggest(asked.garden, asked.tree(), asked.foliation,
                                           *asked.species, kAskedOn, aim, nullptr, tell);
        if (found.outcome == Outcome::met) {
            EXPECT_LE(last, found.leafShare + 1e-9);
        }
    }
    EXPECT_GT(told, 0);
}

TEST(Goals, KeepAndLoseAreObeyed)
{
    std::mt19937 random(14);
    for (int i = 0; i < 10; ++i) {
        const Asked asked(randomGarden(random));
        const auto goes = asked.suggest({{GoalKind::lose, Want::must, "limb1", {}, {}, {}}});
        if (goes.outcome == Outcome::met) {
            ASSERT_EQ(goes.cuts.size(), 1U);
            EXPECT_EQ(goes.cuts[0].cut.limb, "limb1");
            EXPECT_EQ(goes.goals[0].state, GoalResult::State::met);
        }
        const auto both = asked.suggest({{GoalKind::lose, Want::must, "limb1", {}, {}, {}},
                                         {GoalKind::keep, Want::wish, "limb1", {}, {}, {}}});
        if (both.outcome == Outcome::met) {
            EXPECT_EQ(both.goals[1].state, GoalResult::State::givenUp);
        }
    }
}

TEST(Goals, TakeDeadLimbsAwayUnasked)
{
    std::mt19937 random(15);
    auto garden = randomGarden(random);
    auto& limb = garden.trees[0].limbs.back();
    limb.foliage.reset();
    Defect dead;
    dead.kind = DefectKind::dead;
    limb.defects = {dead};
    const Asked asked(garden);
    const auto suggestion = asked.suggest({});
    ASSERT_EQ(suggestion.outcome, Outcome::met);
    ASSERT_FALSE(suggestion.cuts.empty());
    EXPECT_EQ(suggestion.cuts[0].cut.limb, limb.id);
}

TEST(Goals, GiveUpAWishButNotAMust)
{
    std::mt19937 random(16);
    const Asked asked(randomGarden(random));
    const Goal impossible{GoalKind::relief, Want::must, "", 0.01, {}, {}};
    auto wish = impossible;
    wish.want = Want::wish;
    const auto must = asked.suggest({impossible});
    EXPECT_EQ(must.outcome, Outcome::notWithinGuideline);
    EXPECT_EQ(must.goals[0].state, GoalResult::State::missed);
    EXPECT_LT(*must.goals[0].after, *must.goals[0].before);
    EXPECT_FALSE(must.cuts.empty());
    const auto given = asked.suggest({wish});
    EXPECT_EQ(given.outcome, Outcome::nothingNeeded);
    EXPECT_EQ(given.goals[0].state, GoalResult::State::givenUp);
    EXPECT_TRUE(given.cuts.empty());
}

TEST(Goals, LeaveAsideWhatNamesNothing)
{
    std::mt19937 random(17);
    const Asked asked(randomGarden(random));
    const auto suggestion = asked.suggest({{GoalKind::keep, Want::must, "no such", {}, {}, {}}});
    EXPECT_EQ(suggestion.outcome, Outcome::nothingNeeded);
    EXPECT_EQ(suggestion.goals[0].state, GoalResult::State::leftAside);
}

} // namespace
} // namespace model::advice
