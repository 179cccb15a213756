#include "model/advice/search.hpp"

#include <gtest/gtest.h>

#include <unistd.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <optional>
#include <random>
#include <sstream>

/// The search against a general-purpose solver of integer programs: the goals that add up, as
/// linear constraints (GLPK 5.0, CPLEX LP format).
namespace model::advice {
namespace {

double help(const Option& option, std::size_t goal)
{
    return goal < option.helps.size() ? option.helps[goal] : 0.0;
}

std::string name(std::size_t limb, std::size_t option)
{
    return "x" + std::to_string(limb) + "_" + std::to_string(option);
}

/// One line of the program: sum of factor(option) x over all options.
template <typename Factor>
void sum(std::ostream& out, const Decisions& decisions, Factor factor)
{
    bool any = false;
    for (std::size_t limb = 0; limb < decisions.options.size(); ++limb)
        for (std::size_t i = 0; i < decisions.options[limb].size(); ++i)
            if (const double value = factor(decisions.options[limb][i]); value != 0.0) {
                out << (value < 0 ? " - " : " + ") << std::abs(value) << ' ' << name(limb, i)
                    << '\n';
                any = true;
            }
    if (!any)
        out << " 0 " << name(0, 0);
}

/// Every limb that is left on the tree takes one option.
void flows(std::ostream& out, const Decisions& decisions)
{
    for (std::size_t limb = 0; limb < decisions.options.size(); ++limb) {
        for (std::size_t i = 0; i < decisions.options[limb].size(); ++i)
            out << " + " << name(limb, i);
        for (std::size_t other = 0; other < decisions.options.size(); ++other)
            for (std::size_t i = 0; i < decisions.options[other].size(); ++i)
                for (const auto open : decisions.options[other][i].decide)
                    if (open == limb)
                        out << " - " << name(other, i);
        out << " = " << (limb == decisions.root ? 1 : 0) << '\n';
    }
}

std::string linearProgram(const Decisions& decisions)
{
    std::ostringstream out;
    out.precision(17);
    out << "Minimize\n leaf:";
    sum(out, decisions, [](const Option& option) { return option.leaf; });
    out << "\nSubject To\n";
    flows(out, decisions);
    sum(out, decisions, [](const Option& option) { return option.leaf; });
    out << " <= " << decisions.leafMost << '\n';
    sum(out, decisions, [](const Option& option) { return option.wound_m2; });
    out << " <= " << decisions.woundMost_m2 << '\n';
    for (std::size_t goal = 0; goal < decisions.goals; ++goal) {
        sum(out, decisions, [goal](const Option& option) { return help(option, goal); });
        out << " >= 1\n";
    }
    out << "Binary\n";
    for (std::size_t limb = 0; limb < decisions.options.size(); ++limb)
        for (std::size_t i = 0; i < decisions.options[limb].size(); ++i)
            out << ' ' << name(limb, i) << '\n';
    out << "End\n";
    return out.str();
}

/// The least leaf by the solver; nothing if it finds that nothing fits.
std::optional<double> solved(const Decisions& decisions)
{
    const auto folder = std::filesystem::temp_directory_path();
    const auto stem = (folder / ("least-leaf-" + std::to_string(::getpid()))).string();
    std::ofstream(stem + ".lp") << linearProgram(decisions);
    const std::string command =
        "glpsol --lp " + stem + ".lp --write " + stem + ".txt > /dev/null 2>&1";
    if (std::system(command.c_str()) != 0)
        throw std::runtime_error("glpsol could not be run: is glpk-utils installed?");
    // GLPK's plain solution format: "s mip ROWS COLUMNS STATUS VALUE", o for optimal.
    std::ifstream answer(stem + ".txt");
    std::string line;
    std::optional<double> value;
    while (std::getline(answer, line)) {
        std::istringstream words(line);
        std::string s, kind, status;
        long rows = 0;
        long columns = 0;
        double objective = 0.0;
        if (words >> s >> kind >> rows >> columns >> status >> objective && s == "s" &&
            status == "o")
            value = objective;
    }
    std::filesystem::remove(stem + ".lp");
    std::filesystem::remove(stem + ".txt");
    return value;
}

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

// The solver's own tolerance is 1e-6. With three goals and 30 limbs and more the search may give up
// before it has proven its answer: then the solver's must lie between its bound and its answer, and
// the answer is to be near.
TEST(LeastLeaf, IsWhatASolverOfIntegerProgramsFinds)
{
    std::mt19937 random(5);
    int found = 0;
    int proven = 0;
    for (int i = 0; i < 50; ++i) {
        const auto decisions = randomTree(random, 5 + static_cast<std::size_t>(i) * 35 / 49);
        const auto least = solved(decisions);
        const auto choice = leastLeaf(decisions);
        if (choice.proven) {
            ++proven;
            ASSERT_EQ(choice.found, least.has_value()) << "case " << i;
        }
        if (!least)
            continue;
        ++found;
        ASSERT_TRUE(choice.found) << "case " << i;
        EXPECT_LE(choice.bound, *least + 1e-6) << "case " << i;
        EXPECT_GE(choice.leaf, *least - 1e-6) << "case " << i;
        EXPECT_LE(choice.leaf, (choice.proven ? 1.0 : 1.10) * *least + 1e-6) << "case " << i;
    }
    EXPECT_GT(found, 40);
    EXPECT_GE(proven, 38);
}

} // namespace
} // namespace model::advice
