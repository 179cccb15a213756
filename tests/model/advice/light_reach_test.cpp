#include "model/advice/light_reach.hpp"

#include "model/advice/options.hpp"
#include "model/advice/prune.hpp"
#include "model/light/daylight.hpp"
#include "tests/model/advice/limb_from.hpp"
#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

namespace model::advice {
namespace {

using namespace std::chrono_literals;

double pick(std::mt19937& random, double low, double high)
{
    return std::uniform_real_distribution<double>(low, high)(random);
}

/// A stem with limbs of all densities, with laterals that can take over, some with hanging shoots;
/// a bed to the north of it.
Garden drawnGarden(std::mt19937& random)
{
    constexpr FoliageDensity kDensities[]{FoliageDensity::sparse, FoliageDensity::medium,
                                          FoliageDensity::dense};
    Tree tree;
    tree.id = "tree";
    tree.species = "Malus domestica";
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.35, {}}, {{0, 0, 6}, 0.12, {}}};
    trunk.foliage = Foliage{4.0, 1.2, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    tree.limbs.push_back(trunk);
    for (int i = 0; i < 4; ++i) {
        const double turn = pick(random, 0.0, 2.0 * std::numbers::pi);
        const double reach = pick(random, 2.0, 3.5);
        auto limb =
            limbFrom("limb" + std::to_string(i), trunk, pick(random, 1.8, 4.5),
                     {reach * std::cos(turn), reach * std::sin(turn), pick(random, 0.0, 1.5)},
                     pick(random, 0.05, 0.09));
        const auto leaf = [&] {
            return Foliage{0.4,
                           pick(random, 0.4, 0.9),
                           pick(random, 0.0, 1.0) < 0.4 ? pick(random, 0.3, 1.2) : 0.0,
                           {},
                           kDensities[random() % 3],
                           0.0,
                           {}};
        };
        limb.foliage = leaf();
        auto lateral = limbFrom(limb.id + "a", limb, pick(random, 0.6, 1.6),
                                {pick(random, -1, 1), pick(random, -1, 1), 0.8}, 0.045);
        lateral.foliage = leaf();
        tree.limbs.push_back(std::move(lateral));
        tree.limbs.push_back(std::move(limb));
    }
    Garden garden;
    garden.place = {51.5, 0.0, 50.0, "Europe/London", {}};
    garden.trees = {tree};
    garden.plantings.resize(1);
    garden.plantings[0].id = "bed";
    garden.plantings[0].outline_m = {{-2, 1}, {2, 1}, {2, 4}, {-2, 4}};
    return garden;
}

/// A tree, all that may be done to it, and the light of its bed.
struct Bed {
    Garden garden;
    std::vector<Foliation> all;
    light::LightStudy study;
    Decisions decisions;
    LimbStates states;
    LightReach reach;
    std::vector<const Option*> flat;

    explicit Bed(std::mt19937& random)
        : garden(drawnGarden(random)), all(light::foliations(garden, shippedTables())),
          study(garden, all, shippedTables(), 0, {light::levelSurface(garden.plantings[0])},
                question()),
          decisions(options(tree(), all[0], everything())), states(tree(), all[0], decisions),
          reach(study, tree(), states.forms(),
                [](const light::StudyRay& ray) { return ray.worth.sun_h; })
    {
        for (const auto& limb : decisions.options)
            for (const auto& option : limb)
                flat.push_back(&option);
    }
    static light::StudyQuestion question()
    {
        light::StudyQuestion question;
        question.days = {{2026y / 6 / 15, 1.0}};
        question.step = 30min;
        question.skyDirections = 0;
        return question;
    }
    static Wanted everything()
    {
        Wanted wanted;
        wanted.headroom = {{{{-6, -6}, {6, -6}, {6, 6}, {-6, 6}}, 1.9, true}};
        wanted.goals = 1;
        wanted.help = [](const Taken& taken) { return std::vector<double>{taken.share}; };
        return wanted;
    }
    [[nodiscard]] const Tree& tree() const { return garden.trees[0]; }
    [[nodiscard]] double light_h(const std::vector<Cut>& cuts) const
    {
        return study.with(afterCuts(tree(), cuts)).front().mean.sun_h;
    }
};

struct Drawn {
    std::vector<std::size_t> options;
    std::vector<Cut> cuts;
    double leaf{};
};

/// Some complete set of cuts; empty if a limb that has to be decided has no way to stay or go.
std::optional<Drawn> drawn(std::mt19937& random, const Bed& bed)
{
    std::vector<std::size_t> first{0};
    for (const auto& limb : bed.decisions.options)
        first.push_back(first.back() + limb.size());
    Drawn set;
    std::vector<std::size_t> open{bed.decisions.root};
    while (!open.empty()) {
        const auto limb = open.back();
        open.pop_back();
        const auto count = bed.decisions.options[limb].size();
        if (count == 0)
            return std::nullopt;
        const std::size_t i = random() % 3 == 0 ? random() % count : 0;
        const auto& option = bed.decisions.options[limb][i];
        set.options.push_back(first[limb] + i);
        set.cuts.insert(set.cuts.end(), option.cuts.begin(), option.cuts.end());
        set.leaf += option.leaf;
        open.insert(open.end(), option.decide.begin(), option.decide.end());
    }
    return set;
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
            const auto set = drawn(random, bed);
            if (!set)
                continue;
            // The options taken, and some of the others.
            Allowed allowed(bed.flat.size());
            const double more = pick(random, 0.0, 1.0);
            for (auto& each : allowed)
                each = pick(random, 0.0, 1.0) < more ? 1 : 0;
            for (const auto option : set->options)
                allowed[option] = 1;
            const auto most =
                bed.reach.most(bed.states, allowed, set->leaf + pick(random, 0.0, 0.1));
            double bound = most.sure;
            for (const auto option : set->options)
                bound += most.more[option];
            const double measured = bed.light_h(set->cuts);
            ASSERT_LE(measured, bound + 2e-5 * measured) << garden << ' ' << i;
            gained += measured > bed.light_h({}) + 0.05 ? 1 : 0;
        }
    }
    EXPECT_GT(gained, 100);
}

// Law: when nothing is left to be decided the bound is the light itself.
TEST(LightReach, IsTheLightWhereAllIsDecided)
{
    std::mt19937 random(22);
    for (int garden = 0; garden < 12; ++garden) {
        const Bed bed(random);
        for (int i = 0; i < 10; ++i) {
            const auto set = drawn(random, bed);
            if (!set)
                continue;
            Allowed allowed(bed.flat.size());
            for (const auto option : set->options)
                allowed[option] = 1;
            const auto most = bed.reach.most(bed.states, allowed, set->leaf);
            for (const auto option : set->options)
                ASSERT_NEAR(most.more[option], 0.0, 1e-9);
            ASSERT_NEAR(most.sure, bed.light_h(set->cuts), 2e-5 * most.sure) << garden << ' ' << i;
        }
    }
}

} // namespace
} // namespace model::advice
