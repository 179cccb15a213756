#include "model/advice/light_reach.hpp"

#include "model/advice/prune.hpp"
#include "model/light/daylight.hpp"
#include "tests/model/advice/drawn_garden.hpp"
#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

#include <random>

namespace model::advice {
namespace {

using namespace std::chrono_literals;

/// A tree, all that may be done to it, and the light of its bed.
struct Bed {
    Garden garden;
    std::vector<Foliation> all;
    light::LightStudy study;
    Decisions decisions;
    LimbStates states;
    LightReach reach;

    explicit Bed(std::mt19937& random)
        : garden(drawnGarden(random)), all(light::foliations(garden, shippedTables())),
          study(garden, all, shippedTables(), 0, {light::levelSurface(garden.plantings[0])},
                question()),
          decisions(options(tree(), all[0], everything())), states(tree(), all[0], decisions),
          reach(study, tree(), states.forms(),
                [](const light::StudyRay& ray) { return ray.worth.sun_h; })
    {
    }
    static light::StudyQuestion question()
    {
        light::StudyQuestion question;
        question.days = {{2026y / 6 / 15, 1.0}};
        question.step = 30min;
        question.skyDirections = 0;
        return question;
    }
    [[nodiscard]] const Tree& tree() const { return garden.trees[0]; }
    [[nodiscard]] double light_h(const std::vector<Cut>& cuts) const
    {
        return study.with(afterCuts(tree(), cuts)).front().mean.sun_h;
    }
};

double boundOf(const LightReach::Most& most, const DrawnSet& set)
{
    double bound = most.sure;
    for (const auto option : set.options)
        bound += most.more[option];
    return bound;
}

// Law: a set of cuts never gives more light than the bound says that holds for all sets of allowed
// options with no more leaf. Light measured on the cut tree by LightStudy, whose own tests are
// published ones.
TEST(LightReach, IsNeverExceededByTheLightOfACutTree)
{
    std::mt19937 random(21);
    int gained = 0;
    for (int garden = 0; garden < 12; ++garden) {
        const Bed bed(random);
        for (int i = 0; i < 25; ++i) {
            const auto set = drawnSet(random, bed.decisions);
            if (!set)
                continue;
            const auto allowed = drawnAround(random, *set, bed.states.options());
            const auto most =
                bed.reach.most(bed.states, allowed, set->leaf + drawnBetween(random, 0.0, 0.1));
            const double measured = bed.light_h(set->cuts);
            ASSERT_LE(measured, boundOf(most, *set) + 2e-5 * measured) << garden << ' ' << i;
            gained += measured > bed.light_h({}) + 0.05 ? 1 : 0;
        }
    }
    EXPECT_GT(gained, 100);
}

/// What of each limb's own leaf a set of options takes.
std::vector<double> takenBy(const Bed& bed, const DrawnSet& set)
{
    PerOption taken(bed.states.options(), 0.0);
    for (const auto option : set.options)
        taken[option] = 1.0;
    return bed.states.shareLost(taken);
}

// Law: the same, whatever is thought to go; and the bound is closest where the very set is thought
// of, on the whole.
TEST(LightReach, IsNeverExceededWhateverIsThoughtToGo)
{
    std::mt19937 random(23);
    double closer = 0.0;
    double apart = 0.0;
    for (int garden = 0; garden < 12; ++garden) {
        const Bed bed(random);
        for (int i = 0; i < 25; ++i) {
            const auto set = drawnSet(random, bed.decisions);
            const auto other = drawnSet(random, bed.decisions);
            if (!set || !other)
                continue;
            const auto allowed = drawnAround(random, *set, bed.states.options());
            const double leaf = set->leaf + drawnBetween(random, 0.0, 0.3);
            const double measured = bed.light_h(set->cuts);
            const auto bound = [&](const std::vector<double>& likely) {
                return boundOf(bed.reach.most(bed.states, allowed, leaf, likely), *set);
            };
            const double ofItself = bound(takenBy(bed, *set));
            ASSERT_LE(measured, ofItself + 2e-5 * measured) << garden << ' ' << i;
            ASSERT_LE(measured, bound(takenBy(bed, *other)) + 2e-5 * measured);
            closer += ofItself - measured;
            apart += bound({}) - measured;
        }
    }
    EXPECT_LT(closer, 0.5 * apart);
}

// Law: when nothing is left to be decided the bound is the light itself.
TEST(LightReach, IsTheLightWhereAllIsDecided)
{
    std::mt19937 random(22);
    for (int garden = 0; garden < 12; ++garden) {
        const Bed bed(random);
        for (int i = 0; i < 10; ++i) {
            const auto set = drawnSet(random, bed.decisions);
            if (!set)
                continue;
            Allowed allowed(bed.states.options());
            for (const auto option : set->options)
                allowed[option] = 1;
            const auto most = bed.reach.most(bed.states, allowed, set->leaf);
            for (const auto option : set->options)
                ASSERT_NEAR(most.more[option], 0.0, 1e-9);
            ASSERT_NEAR(most.sure, bed.light_h(set->cuts), 2e-5 * most.sure) << garden << ' ' << i;
            const auto states = bed.states.after(Picks(set->options.begin(), set->options.end()));
            ASSERT_TRUE(states);
            ASSERT_NEAR(bed.reach.light(*states), most.sure, 1e-9 * most.sure);
        }
    }
}

} // namespace
} // namespace model::advice
