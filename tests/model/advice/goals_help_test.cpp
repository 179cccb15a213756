#include "model/advice/light_goals.hpp"
#include "model/advice/options.hpp"
#include "model/advice/prune.hpp"
#include "model/advice/relief_goals.hpp"
#include "tests/model/advice/asked_garden.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace model::advice {
namespace {

// Law: the bound that the search trusts (A6) holds for cuts measured on the whole tree.
TEST(ReliefGoals, NeverHelpMoreThanTheyWereThoughtTo)
{
    std::mt19937 random(13);
    double most = 0.0;
    for (int i = 0; i < 60; ++i) {
        const Asked asked(randomGarden(random));
        const std::vector<std::optional<double>> wanted(asked.tree().limbs.size(), 0.2);
        const ReliefGoals goals(asked.garden, asked.tree(), asked.foliation, *asked.species,
                                wanted);
        const auto now = goals.now();
        for (std::size_t limb = 1; limb < asked.tree().limbs.size(); ++limb)
            for (const double share : {0.25, 1.0}) {
                if (share == 1.0 && !limbOrder(asked.tree()).children[limb].empty())
                    continue; // taking it takes more than its own part
                const Cut cut =
                    share < 1.0
                        ? Cut{CutKind::thinning, asked.tree().limbs[limb].id, 0.0, {}, share, {}}
                        : Cut{CutKind::removal, asked.tree().limbs[limb].id, 0.0, {}, {}, {}};
                const Tree after = afterCut(asked.tree(), cut);
                const std::vector<std::optional<double>> same(after.limbs.size(), 0.2);
                const ReliefGoals then(asked.garden, after, asked.foliation, *asked.species, same);
                const auto help = goals.help({limb, 0.0, share});
                std::size_t place = 0;
                for (std::size_t j = 0; j < now.size(); ++j) {
                    if (!now[j] || *now[j] <= 0.2)
                        continue;
                    const auto stays = limbIndex(after, asked.tree().limbs[j].id);
                    const double thought = help[place++];
                    if (stays == kNoLimb || !then.now()[stays])
                        continue;
                    const double did = (*now[j] - *then.now()[stays]) / (*now[j] - 0.2);
                    ASSERT_LE(did, thought + 1e-6) << i << ' ' << limb << ' ' << j;
                    if (did > 0.01)
                        most = std::max(most, 1.25 * did / thought);
                }
            }
    }
    RecordProperty("most", std::to_string(most));
    EXPECT_GT(most, 0.9); // the bound is not an idle one
}

// Law: lifting hanging shoots does no more for a limb's load, and for the light of a bed, than all
// shoots of the limb were thought to (A6). Heights up to over the limb, so that lifts take little
// and much.
TEST(Goals, LiftsNeverHelpMoreThanTheyWereThoughtTo)
{
    std::mt19937 random(17);
    int relieved = 0;
    int lit = 0;
    for (int i = 0; i < 40; ++i) {
        const Asked asked(weepingGarden(random));
        const auto& tree = asked.tree();
        const std::vector<std::optional<double>> wanted(tree.limbs.size(), 0.2);
        const ReliefGoals relief(asked.garden, tree, asked.foliation, *asked.species, wanted);
        const LightGoals light(asked.garden, tree, asked.around, kAskedOn.year(),
                               {{0, 24.0, {6, 7}, false}});
        const double asks_h = 24.0 - light.now()[0];
        for (std::size_t limb = 1; limb < tree.limbs.size(); ++limb) {
            if (!tree.limbs[limb].foliage)
                continue;
            const Cut lift{
                CutKind::lifting, tree.limbs[limb].id, 0.0, drawnBetween(random, 1.0, 5.5), {}, {}};
            const Tree after = afterCut(tree, lift);
            const Taken shoots{limb, 0.0, kAllShoots};
            const ReliefGoals then(asked.garden, after, asked.foliation, *asked.species, wanted);
            const auto help = relief.help(shoots);
            std::size_t place = 0;
            for (std::size_t j = 0; j < tree.limbs.size(); ++j) {
                if (!relief.now()[j] || *relief.now()[j] <= 0.2)
                    continue;
                const double did = (*relief.now()[j] - *then.now()[j]) / (*relief.now()[j] - 0.2);
                relieved += did > 1e-3 ? 1 : 0;
                ASSERT_LE(did, help[place++] + 1e-6) << i << ' ' << limb << ' ' << j;
            }
            const double gained = (light.light(after)[0] - light.now()[0]) / asks_h;
            lit += gained > 1e-3 ? 1 : 0;
            for (const double bound : light.help(shoots))
                ASSERT_LE(gained, bound + 1e-6) << i << ' ' << limb;
        }
    }
    EXPECT_GT(relieved, 20);
    EXPECT_GT(lit, 10);
}

TEST(Goals, CountWhatALiftMayDoForOtherGoals)
{
    std::mt19937 random(19);
    int lifts = 0;
    for (int i = 0; i < 10; ++i) {
        const Asked asked(weepingGarden(random));
        Wanted wanted;
        wanted.headroom = {{{{-6, -6}, {6, -6}, {6, 6}, {-6, 6}}, 1.6, true}};
        wanted.goals = 1;
        wanted.help = [](const Taken& taken) { return std::vector<double>{taken.share}; };
        for (const auto& choices : options(asked.tree(), asked.foliation, wanted).options)
            for (const auto& option : choices)
                if (std::ranges::find(option.cuts, CutKind::lifting, &Cut::kind) !=
                    option.cuts.end()) {
                    ++lifts;
                    EXPECT_GE(option.helps.at(0), 0.99);
                }
    }
    EXPECT_GT(lifts, 5);
}

} // namespace
} // namespace model::advice
