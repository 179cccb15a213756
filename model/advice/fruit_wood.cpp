#include "model/advice/fruit_wood.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace model::advice {
namespace {

struct Row {
    std::string_view latin;
    YearlyRenewal renewal;
};

// University of California, The Backyard Orchard, table of yearly pruning; from memory.
constexpr std::array<Row, 8> kRows{{{"Prunus persica", {0.40, 0.50}},
                                    {"Prunus armeniaca", {0.20, 0.20}},
                                    {"Prunus domestica", {0.20, 0.20}},
                                    {"Prunus salicina", {0.20, 0.20}},
                                    {"Prunus dulcis", {0.20, 0.20}},
                                    {"Malus domestica", {0.10, 0.20}},
                                    {"Pyrus communis", {0.10, 0.20}},
                                    {"Prunus avium", {0.10, 0.20}}}};

} // namespace

std::optional<YearlyRenewal> yearlyRenewal(const Species& species)
{
    const auto row = std::ranges::find(kRows, std::string_view(species.latin), &Row::latin);
    return row == kRows.end() ? std::nullopt : std::optional(row->renewal);
}

std::optional<Finding> renewalNote(const Species& species)
{
    const auto renewal = yearlyRenewal(species);
    if (!renewal)
        return std::nullopt;
    return Finding{Rule::renewFruitWood, Severity::inform, {}, renewal->least, renewal->most};
}

} // namespace model::advice
