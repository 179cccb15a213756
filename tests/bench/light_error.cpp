// Errors of a year of light by how closely it looks, against a step of a minute, every day and
// 1000 directions of sky. Prints the table of docs/methods/light.md, section "How close it is".
// Usage: light_error GARDEN...
#include "model/document/garden_json.hpp"
#include "model/light/daylight.hpp"
#include "model/light/year_light.hpp"
#include "model/species/tables.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <sstream>

using namespace model;
using namespace model::light;

namespace {

std::string text(const std::string& path)
{
    std::ifstream in(path, std::ios::binary);
    std::stringstream all;
    all << in.rdbuf();
    return all.str();
}

struct Worst {
    double seasonSun{}; ///< percent of the open sky's
    double seasonDli{};
    double monthSun{}; ///< minutes a day: a percentage means little where a face sees little sun
    double monthDli{};
};

double percent(double quick, double exact, double open)
{
    return 100.0 * std::abs(quick - exact) / std::max(0.1, open);
}

Worst worstOf(const std::vector<SurfaceLight>& exact, const std::vector<SurfaceLight>& quick)
{
    Worst worst;
    for (std::size_t s = 0; s < exact.size(); ++s) {
        const auto& season = exact[s].growingSeason;
        const auto& found = quick[s].growingSeason;
        worst.seasonSun =
            std::max(worst.seasonSun,
                     percent(found.standing.sun_h, season.standing.sun_h, season.open.sun_h));
        worst.seasonDli =
            std::max(worst.seasonDli,
                     percent(found.standing.dli_mol, season.standing.dli_mol, season.open.dli_mol));
        for (std::size_t m = 0; m < 12; ++m) {
            const auto& month = exact[s].months[m];
            const auto& other = quick[s].months[m];
            worst.monthSun = std::max(worst.monthSun,
                                      60.0 * std::abs(other.standing.sun_h - month.standing.sun_h));
            worst.monthDli =
                std::max(worst.monthDli, percent(other.standing.dli_mol, month.standing.dli_mol,
                                                 month.open.dli_mol));
        }
    }
    return worst;
}

} // namespace

int main(int count, char** arguments)
{
    const std::string trees = UNDERBOUGH_TREES;
    const auto sources = text(trees + "/sources.csv");
    const auto wood = text(trees + "/wood.csv");
    const auto practice = text(trees + "/practice.csv");
    const auto leaf = text(trees + "/leaf.csv");
    const auto plants = text(trees + "/plants.csv");
    const auto tables = readTables({sources, wood, practice, leaf, plants});
    for (int i = 1; i < count; ++i) {
        const auto reading = readGarden(text(arguments[i]));
        if (!reading.garden) {
            std::fprintf(stderr, "%s: not a garden\n", arguments[i]);
            return 2;
        }
        const auto sketched = foliations(*reading.garden, tables);
        LightQuestion question;
        question.year = std::chrono::year{2025};
        const auto answer = [&](std::chrono::seconds step, int days, int sky) {
            question.detail = {step, days, sky, false, 1};
            return yearOfLight(*reading.garden, sketched, tables, question);
        };
        const auto exact = answer(std::chrono::minutes{1}, 31, 1000);
        std::printf(
            "%s\nstep_min days_per_month sky | season sun %% dli %% | month sun min dli %% | ms\n",
            arguments[i]);
        for (const auto& [step, days, sky] : {std::tuple{5, 8, 400},
                                              {5, 4, 200},
                                              {10, 4, 400},
                                              {10, 4, 200},
                                              {10, 4, 100},
                                              {20, 4, 200},
                                              {10, 2, 200},
                                              {20, 2, 200},
                                              {30, 1, 100}}) {
            const auto start = std::chrono::steady_clock::now();
            const auto quick = answer(std::chrono::minutes{step}, days, sky);
            const std::chrono::duration<double, std::milli> took =
                std::chrono::steady_clock::now() - start;
            const auto worst = worstOf(exact, quick);
            std::printf("%8d %14d %4d | %7.2f %7.2f | %7.2f %7.2f | %5.0f\n", step, days, sky,
                        worst.seasonSun, worst.seasonDli, worst.monthSun, worst.monthDli,
                        took.count());
        }
    }
    return 0;
}
