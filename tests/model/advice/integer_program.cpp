#include "tests/model/advice/integer_program.hpp"

#include <unistd.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

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

} // namespace

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

} // namespace model::advice
