#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <map>
#include <utility>

namespace outside {
namespace {

/// `text` between quotes of JSON.
std::string quoted(const std::string& text)
{
    std::string out = "\"";
    for (const char c : text) {
        if (static_cast<unsigned char>(c) < 0x20) {
            out += ' ';
            continue;
        }
        if (c == '"' || c == '\\')
            out += '\\';
        out += c;
    }
    return out + '"';
}

/// A number of JSON that reads back as the same double; what JSON can't write becomes null.
std::string number(double value)
{
    char digits[32];
    std::snprintf(digits, sizeof digits, "%.17g", value);
    return std::isfinite(value) ? digits : "null";
}

/// The path from tests/ on: what stands before it differs from machine to machine.
std::string inTests(const std::string& file)
{
    const auto at = file.rfind("tests/");
    return at == std::string::npos ? file : file.substr(at);
}

/// The file of the test that runs, emptied at the first record that this program leaves in it: each
/// test is run by a process of its own, many at once, and again and again.
std::ofstream& records(const std::string& folder, const std::string& file, const std::string& test)
{
    static std::map<std::string, std::ofstream> open;
    auto name = inTests(file) + '.' + test + ".jsonl";
    std::ranges::replace(name, '/', '_');
    auto [at, fresh] = open.try_emplace(name);
    if (fresh)
        at->second.open(folder + '/' + name, std::ios::trunc);
    return at->second;
}

} // namespace

Figure near(double computed, double expected, double tolerance)
{
    return {computed, expected, tolerance, false};
}

Figure within(double computed, double low, double high)
{
    return {computed, (low + high) / 2.0, (high - low) / 2.0, true};
}

Check::Check(Figure figure, Place place) : figure_(figure), place_(place) {}

Check::~Check()
{
    const auto* running = testing::UnitTest::GetInstance()->current_test_info();
    const auto test = std::string(running->test_suite_name()) + '.' + running->name();
    if (const char* folder = std::getenv("UNDERBOUGH_OUTSIDE_CHECKS"))
        records(folder, place_.file, test)
            << "{\"test\":" << quoted(test) << ",\"file\":" << quoted(inTests(place_.file))
            << ",\"line\":" << place_.line << ",\"what\":" << quoted(place_.what)
            << ",\"case\":" << quoted(case_.str()) << ",\"computed\":" << number(figure_.computed)
            << ",\"expected\":" << number(figure_.expected)
            << ",\"tolerance\":" << number(figure_.tolerance)
            << ",\"range\":" << (figure_.isRange ? "true" : "false")
            << ",\"held\":" << (place_.demand == Demand::held ? "true" : "false") << "}\n"
            << std::flush;
    if (place_.demand == Demand::told)
        return;
    // The rounding of a range's middle must not decide at its very ends.
    const double slack = figure_.isRange ? 1e-12 * std::abs(figure_.expected) : 0.0;
    if (!(std::abs(figure_.computed - figure_.expected) <= figure_.tolerance + slack))
        ADD_FAILURE_AT(place_.file, place_.line)
            << place_.what << " is " << number(figure_.computed) << ", expected "
            << number(figure_.expected) << " give or take " << number(figure_.tolerance) << ' '
            << case_.str();
}

} // namespace outside
