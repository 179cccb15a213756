#include "model/advice/nearby.hpp"
#include "model/advice/search.hpp"
#include "tests/model/advice/integer_program.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <string>

/// The search against a general-purpose solver of integer programs: the goals that add up, as
/// linear constraints (GLPK 5.0, CPLEX LP format).
namespace model::advice {
namespace {

/// A tree of up to 40 limbs with one to three goals, each of which the whole crown could reach a
/// few times over.
Decisions randomTree(std::mt19937& random, std::size_t count)
{
    const auto pick = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    std::vector<std::vector<std::size_t>> children(count);
    for (std::size_t i = 1; i < count; ++i)
        children[std::uniform_int_distribution<std::size_t>(i < 6 ? 0 : i / 3, i - 1)(random) % i]
            .push_back(i);
    Decisions decisions;
    decisions.goals = 1 + std::uniform_int_distribution<std::size_t>(0, 2)(random);
    decisions.leafMost = 0.25;
    decisions.woundMost_m2 = 0.03;
    for (std::size_t i = 0; i < count; ++i) {
        const double leaf = pick(0.5, 1.5) / static_cast<double>(count);
        std::vector<double> helps;
        for (std::size_t goal = 0; goal < decisions.goals; ++goal)
            helps.push_back(pick(0.0, 1.0) < 0.3 ? 0.0 : pick(0.0, 12.0) * leaf);
        const auto part = [&](double share, double wound_m2, std::vector<std::size_t> decide) {
            Option option{{Cut{CutKind::thinning, std::to_string(i), 0.0, {}, share, {}}},
                          share * leaf,
                          wound_m2,
                          std::move(decide),
                          helps};
            for (double& h : option.helps)
                h *= share;
            return option;
        };
        std::vector<Option> options{{{}, 0.0, 0.0, children[i], {}}};
        for (const double step : {0.10, 0.15, 0.20, 0.25})
            options.push_back(part(step, 0.0, children[i]));
        if (i != 0 && children[i].size() < 2) {
            double wound = pick(0.0003, 0.006);
            options.push_back(part(1.0, wound, children[i]));
        }
        decisions.options.push_back(std::move(options));
    }
    return decisions;
}

// Outside: GLPK 5.0, a general-purpose solver of integer programs, whose own tolerance is 1e-6.
TEST(LeastLeaf, IsWhatASolverOfIntegerProgramsFinds)
{
    std::mt19937 random(5);
    int found = 0;
    for (int i = 0; i < 50; ++i) {
        const auto decisions = randomTree(random, 5 + static_cast<std::size_t>(i) * 35 / 49);
        const auto least = solved(decisions);
        const auto choice = leastLeaf(decisions);
        ASSERT_TRUE(choice.proven) << "case " << i;
        ASSERT_EQ(choice.found, least.has_value()) << "case " << i;
        if (!least)
            continue;
        ++found;
        OUTSIDE_NEAR(choice.leaf, *least, 1e-6) << "case " << i;
    }
    EXPECT_GT(found, 40);
}

/// What options help, added up cut by cut as if it had to be measured.
std::vector<double> missingOf(const Decisions& decisions, const std::vector<Cut>& cuts)
{
    std::vector<double> missing(decisions.goals, 1.0);
    for (const auto& cut : cuts) {
        const auto& options = decisions.options[std::stoul(cut.limb)];
        const auto option = std::ranges::find(options, std::vector{cut}, &Option::cuts);
        for (std::size_t goal = 0; goal < missing.size(); ++goal)
            missing[goal] -= option->helps[goal];
    }
    return missing;
}

// Outside: the same solver. Sets that are found by measuring alone, with no bound, do what is
// asked, never for less than the solver's least, and on most trees for little more (how little is
// remembered, not published).
TEST(Nearby, ComesCloseToWhatASolverOfIntegerProgramsFinds)
{
    constexpr long kMeasures = 1500;
    std::mt19937 random(6);
    int found = 0;
    int close = 0;
    int trees = 0;
    for (int i = 0; i < 50; ++i) {
        auto decisions = randomTree(random, 5 + static_cast<std::size_t>(i) * 35 / 49);
        decisions.missing = [&](const Picks& /*picks*/, const std::vector<Cut>& cuts) {
            return missingOf(decisions, cuts);
        };
        const auto least = solved(decisions);
        const Bounder bounder(decisions);
        const auto picks = Nearby(decisions, bounder, nullptr).from({}, kMeasures);
        if (!least) {
            EXPECT_FALSE(picks) << "case " << i;
            continue;
        }
        ++trees;
        if (!picks)
            continue;
        ++found;
        EXPECT_TRUE(bounder.fits(*picks)) << "case " << i;
        EXPECT_GE(bounder.leaf(*picks), *least - 1e-6) << "case " << i;
        close += bounder.leaf(*picks) <= 1.02 * *least ? 1 : 0;
    }
    EXPECT_GE(found, trees - 2);
    EXPECT_GE(close, trees * 2 / 3);
}

// Law: the same tree and the same question, the same answer, however often it is asked.
TEST(Nearby, AnswersTheSameEveryTimeAndGoesOnWhereItWasCutShort)
{
    std::mt19937 random(8);
    auto decisions = randomTree(random, 30);
    decisions.missing = [&](const Picks& /*picks*/, const std::vector<Cut>& cuts) {
        return missingOf(decisions, cuts);
    };
    const Bounder bounder(decisions);
    Nearby bit(decisions, bounder, nullptr);
    Nearby whole(decisions, bounder, nullptr);
    const auto all = whole.from({}, 100'000);
    ASSERT_TRUE(all);
    ASSERT_FALSE(whole.cutShort());
    std::optional<Picks> last;
    for (int i = 0; i < 1000 && (i == 0 || bit.cutShort()); ++i)
        last = bit.from({}, 50);
    ASSERT_TRUE(last);
    EXPECT_EQ(*last, *all);
}

} // namespace
} // namespace model::advice
