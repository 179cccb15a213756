#pragma once

#include "model/advice/search.hpp"

#include <vector>

namespace model::advice {

/// What help is worth and what wounds cost, as leaf.
struct Prices {
    std::vector<double> goals; ///< paid for all of each goal, >= 0
    double wound_1_m2{};       ///< charged for each m2 of wound, >= 0
};
[[nodiscard]] Prices noPrices(const Decisions& decisions);

/// Leaf of an option, less what the goals pay for it, and what is charged for its wound.
[[nodiscard]] double priced(const Option& option, const Prices& prices);

/// What the goals pay for all that they ask, less the charge for all the wounds that are allowed:
/// added to priced leaf it makes a bound on leaf (A1).
[[nodiscard]] double atStake(const Decisions& decisions, const Prices& prices);

/// Least priced leaf of each limb with all that grows from it; infinite where nothing fits (A1).
[[nodiscard]] std::vector<double> leastPriced(const Decisions& decisions, const Prices& prices);

/// Prices whose bound at the root is as high as some hundred steps uphill find it (A1), with
/// these goals paying and the others not. No prices is a choice of prices too: the result is never
/// worse than that.
[[nodiscard]] Prices bestPrices(const Decisions& decisions, const std::vector<bool>& paying);

/// The most help with one goal that each limb with all that grows from it can give.
[[nodiscard]] std::vector<double> mostHelp(const Decisions& decisions, std::size_t goal);

} // namespace model::advice
