#include "model/advice/relief_goals.hpp"
#include "model/advice/suggestion.hpp"

#include "model/advice/allowance.hpp"
#include "model/advice/crown_shape.hpp"
#include "model/advice/light_goals.hpp"
#include "model/advice/limits.hpp"
#include "model/advice/options.hpp"
#include "model/advice/prune.hpp"
#include "model/growth/grown.hpp"
#include "model/light/daylight.hpp"
#include "model/load/breaking_gust.hpp"
#include "tests/model/advice/limb_from.hpp"
#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <random>

namespace model::advice {
namespace {

using namespace std::chrono_literals;

constexpr auto kDate = 2026y / 1 / 15;

double pick(std::mt19937& random, double low, double high)
{
    return std::uniform_real_distribution<double>(low, high)(random);
}

Limb leafyLimbFrom(std::string id, const Limb& parent, double at_m, Vec3 run_m, double thickness_m)
{
    auto limb = limbFrom(std::move(id), parent, at_m, run_m, thickness_m);
    limb.foliage = Foliage{0.4, 0.7, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    return limb;
}

/// A stem with three or four limbs, some with a lateral, south of a bed.
Garden randomGarden(std::mt19937& random)
{
    Tree tree;
    tree.id = "tree";
    tree.species = "Malus domestica";
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.35, {}}, {{0, 0, 6}, 0.12, {}}};
    trunk.foliage = Foliage{4.0, 1.2, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    tree.limbs.push_back(trunk);
    const int limbs = std::uniform_int_distribution<int>(2, 3)(random);
    for (int i = 0; i < limbs; ++i) {
        const double turn = pick(random, 0.0, 2.0 * std::numbers::pi);
        const double reach = pick(random, 2.0, 3.5);
        auto limb =
            limbFrom("limb" + std::to_string(i), trunk, pick(random, 1.8, 4.5),
                     {reach * std::cos(turn), reach * std::sin(turn), pick(random, 0.0, 1.5)},
                     pick(random, 0.05, 0.09));
        if (pick(random, 0.0, 1.0) < 0.5)
            tree.limbs.push_back(leafyLimbFrom(limb.id + "a", limb, pick(random, 0.6, 1.4),
                                               {pick(random, -1, 1), pick(random, -1, 1), 0.8},
                                               pick(random, 0.025, 0.045)));
        tree.limbs.push_back(std::move(limb));
    }
    Garden garden;
    garden.place = {51.5, 0.0, 50.0, "Europe/London"};
    garden.designGust_m_s = 28.0;
    garden.trees = {tree};
    garden.plantings = {{"bed",
                         "",
                         PlantingKind::bed,
                         "Solanum lycopersicum",
                         {{-2, 1}, {2, 1}, {2, 4}, {-2, 4}},
                         0.0,
                         {}}};
    return garden;
}

struct Asked {
    Garden garden;
    Foliation foliation;
    const Species* species;
    std::vector<Foliation> all;
    Surroundings around;
    explicit Asked(Garden g)
        : garden(std::move(g)), species(findSpecies(shippedTables(), garden.trees[0].species)),
          all(light::foliations(garden, shippedTables())), around{shippedTables(), all}
    {
        foliation = all[0];
    }
    [[nodiscard]] const Tree& tree() const { return garden.trees[0]; }
    [[nodiscard]] Suggestion suggest(std::vector<Goal> goals) const
    {
        return advice::suggest(garden, tree(), foliation, *species, kDate,
                               {.spare_m = 0.0, .goals = std::move(goals), .around = &around});
    }
};

double leafOf(const Tree& tree, const Foliation& foliation)
{
    double sum = 0.0;
    for (const double area : leafAreaByLimb_m2(tree, foliation))
        sum += area;
    return sum;
}

/// Tries every set of cuts on the drawn tree: cuts it, measures loads, light and crown afresh.
class EverySet {
public:
    EverySet(const Asked& asked, const std::vector<Goal>& goals)
        : asked_(asked), targets_({asked.garden, asked.tree(), asked.foliation, *asked.species,
                                   kDate, &asked.around},
                                  goals),
          before_(crownShape(asked.tree(), asked.foliation)),
          whole_m2_(leafOf(asked.tree(), asked.foliation)),
          most_(allowance(asked.tree(), *asked.species, kDate).share)
    {
        walk(limbOrder(asked.tree()).rootFirst, 0, {});
    }
    double best{std::numeric_limits<double>::infinity()};

private:
    void walk(const std::vector<std::size_t>& limbs, std::size_t next, std::vector<Cut> cuts)
    {
        if (next == limbs.size())
            return measure(cuts);
        const auto& tree = asked_.tree();
        const auto& limb = tree.limbs[limbs[next]];
        if (limbIndex(afterCuts(tree, cuts), limb.id) == kNoLimb)
            return walk(limbs, next + 1, std::move(cuts));
        const auto with = [&](const Cut& cut, bool thinToo) {
            auto more = cuts;
            more.push_back(cut);
            walk(limbs, next + 1, more);
            if (thinToo)
                thinned(limbs, next, limb, more);
        };
        walk(limbs, next + 1, cuts);
        thinned(limbs, next, limb, cuts);
        if (!limb.parent)
            return;
        for (const auto& lateral : tree.limbs) {
            const double cut_m = axisPoint(limb, lateral.attachedAt_m).diameter_m;
            if (lateral.parent == limb.id && lateral.attachedAt_m > 0.0 &&
                lateral.stations[0].diameter_m >= kLateralLeast * cut_m)
                with({CutKind::reduction, limb.id, lateral.attachedAt_m, {}, {}, {}}, true);
        }
        with({CutKind::removal, limb.id, 0.0, {}, {}, {}}, false);
    }

    void thinned(const std::vector<std::size_t>& limbs, std::size_t next, const Limb& limb,
                 const std::vector<Cut>& cuts)
    {
        for (const double step : kThinSteps) {
            auto more = cuts;
            more.push_back({CutKind::thinning, limb.id, 0.0, {}, step, {}});
            walk(limbs, next + 1, more);
        }
    }

    bool overHalf(const Cut& cut) const
    {
        const auto& tree = asked_.tree();
        const auto limb = limbIndex(tree, cut.limb);
        const auto leafFrom = [&](const Tree& t) {
            const auto areas = leafAreaByLimb_m2(t, asked_.foliation);
            double sum = 0.0;
            for (const auto i : limbAndBeyond(limbOrder(t), limbIndex(t, tree.limbs[limb].id)))
                sum += areas[i];
            return sum;
        };
        const double before = leafFrom(tree);
        return before - leafFrom(afterCut(tree, cut)) > kLimbShareMost * before;
    }

    void measure(const std::vector<Cut>& cuts)
    {
        const auto& tree = asked_.tree();
        const Tree after = afterCuts(tree, cuts);
        const double taken = 1.0 - leafOf(after, asked_.foliation) / whole_m2_;
        if (taken > most_ + 1e-12 || taken >= best - 1e-12)
            return;
        double wound_m2 = 0.0;
        for (const auto& cut : cuts) {
            if (cut.kind == CutKind::reduction && overHalf(cut))
                return;
            if (cut.kind == CutKind::thinning)
                continue;
            const double d = axisPoint(tree.limbs[limbIndex(tree, cut.limb)], cut.at_m).diameter_m;
            wound_m2 += std::numbers::pi / 4.0 * d * d;
        }
        const double stem_m = stemDiameter_m(tree);
        if (wound_m2 > kWoundSum * std::numbers::pi / 4.0 * stem_m * stem_m)
            return;
        const auto shape = crownShape(after, asked_.foliation);
        if (shape.liveCrownRatio < std::min(kLiveCrownRatioLeast, before_.liveCrownRatio) - 1e-9 ||
            shape.lowerTwoThirdsLeaf <
                std::min(kLowerTwoThirdsLeast, before_.lowerTwoThirdsLeaf) - 1e-9)
            return;
        if (targets_.met(after))
            best = taken;
    }

    const Asked& asked_;
    Targets targets_;
    CrownShape before_;
    double whole_m2_;
    double most_; ///< share of the leaf that may go
};

void expectLeast(std::mt19937& random, const std::vector<Goal>& goals, int cases, int& found)
{
    for (int i = 0; i < cases; ++i) {
        const Asked asked(randomGarden(random));
        const EverySet all(asked, goals);
        const auto suggestion = asked.suggest(goals);
        if (!suggestion.proven) { // it gave up: what it found may be dearer, never cheaper
            EXPECT_GE(suggestion.leafShare, all.best - 1e-9) << "case " << i;
            continue;
        }
        if (suggestion.outcome == Outcome::notWithinGuideline) {
            ASSERT_FALSE(std::isfinite(all.best)) << "case " << i;
            continue;
        }
        ++found;
        ASSERT_NEAR(suggestion.leafShare, all.best, 1e-9) << "case " << i;
    }
}

// Brute force.
TEST(Goals, ReliefTakesTheLeastLeafOfAllSetsOfCuts)
{
    std::mt19937 random(11);
    int found = 0;
    expectLeast(random, {{GoalKind::relief, Want::must, "", 0.6, {}, {}}}, 5, found);
    EXPECT_GT(found, 1);
}

TEST(Goals, LightTakesTheLeastLeafOfAllSetsOfCuts)
{
    std::mt19937 random(12);
    int found = 0;
    expectLeast(random, {{GoalKind::light, Want::must, "bed", 7.0, {6, 7}, {}}}, 3, found);
    EXPECT_GT(found, 0);
}

TEST(Goals, BearingAGustTakesTheLeastLeafOfAllSetsOfCuts)
{
    std::mt19937 random(31);
    int found = 0;
    expectLeast(random, {{GoalKind::gust, Want::must, "", 40.0, {}, {}}}, 5, found);
    EXPECT_GT(found, 0);
}

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

TEST(Goals, LightForGrowthTakesTheLeastLeafOfAllSetsOfCuts)
{
    std::mt19937 random(33);
    int found = 0;
    for (int i = 0; i < 2; ++i) {
        auto probe = random;
        const Asked asked(randomGarden(probe));
        const LightGoals light(asked.garden, asked.tree(), asked.around, kDate.year(),
                               {{0, 100.0, {6}, true}});
        EXPECT_GT(light.without()[0], light.now()[0]);
        const double wanted = std::lerp(light.now()[0], light.without()[0], 0.15);
        expectLeast(random, {{GoalKind::dli, Want::must, "bed", wanted, {6}, {}}}, 1, found);
    }
    EXPECT_GT(found, 0);
}

// Law: on the middle day a middling tree has grown just so far that the bed has the light that was
// wanted (A16); how far that is found here by growing it centimetre by centimetre.
TEST(Goals, LightIsLostOnTheDayThatTheTreeHasGrownSoFar)
{
    std::mt19937 random(34);
    int dated = 0;
    for (int i = 0; i < 8; ++i) {
        const Asked asked(randomGarden(random));
        const LightGoals light(asked.garden, asked.tree(), asked.around, kDate.year(),
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
                                                          asked.garden.place, kDate)
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

/// The same garden with shoots that hang from every limb.
Garden weepingGarden(std::mt19937& random)
{
    Garden garden = randomGarden(random);
    for (auto& limb : garden.trees[0].limbs)
        if (limb.parent && limb.foliage)
            limb.foliage->hanging_m = pick(random, 0.4, 1.5);
    return garden;
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
        const LightGoals light(asked.garden, tree, asked.around, kDate.year(),
                               {{0, 24.0, {6, 7}, false}});
        const double asks_h = 24.0 - light.now()[0];
        for (std::size_t limb = 1; limb < tree.limbs.size(); ++limb) {
            if (!tree.limbs[limb].foliage)
                continue;
            const Cut lift{
                CutKind::lifting, tree.limbs[limb].id, 0.0, pick(random, 1.0, 5.5), {}, {}};
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
                                           *asked.species, kDate, aim, nullptr, tell);
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
