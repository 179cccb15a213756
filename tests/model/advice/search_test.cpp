#include "model/advice/search.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <random>

namespace model::advice {
namespace {

/// Brute force: every set of options, one limb after the other, no bound of any kind.
struct Exhaustive {
    const Decisions& decisions;
    double best{std::numeric_limits<double>::infinity()};

    bool helped(const std::vector<double>& helps) const
    {
        return std::ranges::all_of(helps, [](double h) { return h >= 1.0; });
    }

    std::vector<std::size_t> taken{}; ///< options, as of one row

    bool keepsLimits() const
    {
        return std::ranges::all_of(decisions.limits, [this](const Limit& limit) {
            double takes = 0.0;
            for (const auto option : taken)
                takes += limit.takes[option];
            return takes <= limit.most;
        });
    }

    std::size_t firstOf(std::size_t limb) const
    {
        std::size_t first = 0;
        for (std::size_t i = 0; i < limb; ++i)
            first += decisions.options[i].size();
        return first;
    }

    void go(std::vector<std::size_t> open, double leaf, double wound_m2, std::vector<Cut> cuts,
            std::vector<double> helps = {})
    {
        helps.resize(decisions.goals);
        if (open.empty()) {
            if (helped(helps) && keepsLimits() && leaf <= decisions.leafMost &&
                wound_m2 <= decisions.woundMost_m2 &&
                (!decisions.crownAccepts || decisions.crownAccepts(cuts)))
                best = std::min(best, leaf);
            return;
        }
        const auto limb = open.back();
        open.pop_back();
        for (std::size_t i = 0; i < decisions.options[limb].size(); ++i) {
            const auto& option = decisions.options[limb][i];
            auto nextOpen = open;
            nextOpen.insert(nextOpen.end(), option.decide.begin(), option.decide.end());
            auto nextCuts = cuts;
            nextCuts.insert(nextCuts.end(), option.cuts.begin(), option.cuts.end());
            auto nextHelps = helps;
            for (std::size_t goal = 0; goal < option.helps.size(); ++goal)
                nextHelps[goal] += option.helps[goal];
            taken.push_back(firstOf(limb) + i);
            go(nextOpen, leaf + option.leaf, wound_m2 + option.wound_m2, nextCuts, nextHelps);
            taken.pop_back();
        }
    }
};

/// Random decisions on `count` limbs; the parent of limb i is some limb before it.
Decisions randomDecisions(std::mt19937& random, std::size_t count)
{
    std::uniform_real_distribution<double> amount(0.0, 0.2);
    std::bernoulli_distribution coin(0.5);
    std::vector<std::vector<std::size_t>> children(count);
    for (std::size_t i = 1; i < count; ++i)
        children[std::uniform_int_distribution<std::size_t>(0, i - 1)(random)].push_back(i);
    Decisions decisions;
    decisions.leafMost = 0.4;
    decisions.woundMost_m2 = 0.5;
    for (std::size_t i = 0; i < count; ++i) {
        std::vector<Option> options;
        if (i == 0 || coin(random))
            options.push_back({{}, 0.0, 0.0, children[i], {}});
        for (std::size_t kept = 0; kept < children[i].size(); ++kept) {
            const std::vector<std::size_t> some(children[i].begin(),
                                                children[i].begin() + static_cast<long>(kept));
            options.push_back(
                {{Cut{CutKind::reduction, std::to_string(i), double(kept), {}, {}, {}}},
                 amount(random),
                 amount(random),
                 some,
                 {}});
        }
        if (i != 0)
            options.push_back({{Cut{CutKind::removal, std::to_string(i), 0.0, {}, {}, {}}},
                               amount(random),
                               amount(random),
                               {},
                               {}});
        decisions.options.push_back(std::move(options));
    }
    return decisions;
}

/// The same with goals that options help with, and that a set must be helped with by 1 in all.
Decisions withGoals(std::mt19937& random, Decisions decisions, std::size_t goals)
{
    std::uniform_real_distribution<double> amount(0.0, 0.7);
    decisions.goals = goals;
    for (auto& options : decisions.options)
        for (auto& option : options)
            if (!option.cuts.empty())
                for (std::size_t goal = 0; goal < goals; ++goal)
                    option.helps.push_back(amount(random));
    return decisions;
}

/// The same with limits on things of which options take some, or give some room.
Decisions withLimits(std::mt19937& random, Decisions decisions, std::size_t limits)
{
    std::uniform_real_distribution<double> amount(-0.4, 1.0);
    std::uniform_real_distribution<double> most(0.0, 0.8);
    for (std::size_t i = 0; i < limits; ++i) {
        Limit limit;
        for (const auto& options : decisions.options)
            for (const auto& option : options)
                limit.takes.push_back(option.cuts.empty() ? 0.0 : amount(random));
        limit.most = most(random);
        decisions.limits.push_back(std::move(limit));
    }
    return decisions;
}

// Brute force.
TEST(LeastLeaf, IsWhatTryingEverySetOfCutsFinds)
{
    std::mt19937 random(1);
    int found = 0;
    for (int i = 0; i < 300; ++i) {
        auto decisions = randomDecisions(random, 2 + static_cast<std::size_t>(i) % 9);
        if (i % 2 == 0) // goals that cuts help with
            decisions =
                withGoals(random, std::move(decisions), 1 + static_cast<std::size_t>(i) % 3);
        if (i % 4 < 2) // limits that add up
            decisions =
                withLimits(random, std::move(decisions), 1 + static_cast<std::size_t>(i) % 5);
        if (i % 3 == 0) // a crown rule that looks at whole sets, in no particular order of leaf
            decisions.crownAccepts = [](const std::vector<Cut>& cuts) {
                return cuts.size() % 2 == 0;
            };
        Exhaustive all{decisions};
        all.go({decisions.root}, 0.0, 0.0, {});
        const auto choice = leastLeaf(decisions);
        ASSERT_TRUE(choice.proven);
        ASSERT_EQ(choice.found, std::isfinite(all.best)) << "case " << i;
        if (choice.found) {
            ++found;
            ASSERT_NEAR(choice.leaf, all.best, 1e-12) << "case " << i;
        }
    }
    EXPECT_GT(found, 100); // the random cases must not all be hopeless
    EXPECT_LT(found, 300); // nor all easy
}

// Law: the bound of the search never exceeds the true least.
TEST(LeastLeaf, NeverFallsBelowItsBound)
{
    std::mt19937 random(2);
    for (int i = 0; i < 200; ++i) {
        const auto decisions = randomDecisions(random, 8);
        const auto choice = leastLeaf(decisions);
        if (choice.found) {
            ASSERT_GE(choice.leaf, relaxedLeaf(decisions)[decisions.root] - 1e-12);
        }
    }
}

TEST(LeastLeaf, PrefersFewerCutsAtTheSameLeaf)
{
    Decisions decisions;
    decisions.leafMost = 1.0;
    decisions.woundMost_m2 = 1.0;
    const Cut cut{CutKind::removal, "a", 0.0, {}, {}, {}};
    decisions.options = {{{{cut, cut}, 0.1, 0.0, {}, {}}, {{cut}, 0.1, 0.2, {}, {}}}};
    const auto choice = leastLeaf(decisions);
    ASSERT_TRUE(choice.found);
    EXPECT_EQ(choice.cuts.size(), 1u);
}

TEST(LeastLeaf, SaysWhenItWasStopped)
{
    std::mt19937 random(3);
    const auto decisions = randomDecisions(random, 8);
    const std::atomic<bool> stop{true};
    EXPECT_FALSE(leastLeaf(decisions, &stop).proven);
}

TEST(LeastLeaf, ProvesThatNothingFits)
{
    Decisions decisions;
    decisions.options = {{}};
    const auto choice = leastLeaf(decisions);
    EXPECT_FALSE(choice.found);
    EXPECT_TRUE(choice.proven);
}

} // namespace
} // namespace model::advice
