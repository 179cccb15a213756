#include "model/advice/search_bound.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace model::advice {
namespace {

constexpr double kUnbounded = std::numeric_limits<double>::infinity();

/// Every limb after all that its options leave open.
std::vector<std::size_t> leavesFirst(const Decisions& decisions)
{
    std::vector<std::size_t> order;
    std::vector<bool> seen(decisions.options.size());
    const auto visit = [&](const auto& self, std::size_t limb) -> void {
        if (seen[limb])
            return;
        seen[limb] = true;
        for (const auto& option : decisions.options[limb])
            for (const auto open : option.decide)
                self(self, open);
        order.push_back(limb);
    };
    visit(visit, decisions.root);
    return order;
}

/// Best sum, leaves to root, of what `worth` gives each option.
template <typename Worth, typename Better>
std::vector<double> bestSums(const Decisions& decisions, double none, Worth worth, Better better)
{
    std::vector<double> best(decisions.options.size(), none);
    for (const auto limb : leavesFirst(decisions))
        for (const auto& option : decisions.options[limb]) {
            double sum = worth(option);
            for (const auto open : option.decide)
                sum += best[open];
            if (better(sum, best[limb]))
                best[limb] = sum;
        }
    return best;
}

double help(const Option& option, std::size_t goal)
{
    return goal < option.helps.size() ? option.helps[goal] : 0.0;
}

/// What the cheapest choice at some prices comes to.
struct Cheapest {
    std::vector<double> help; ///< by goal
    double wound_m2{};
};

Cheapest cheapest(const Decisions& decisions, const Prices& prices,
                  const std::vector<double>& least)
{
    Cheapest sum{std::vector<double>(decisions.goals, 0.0), 0.0};
    std::vector<std::size_t> open{decisions.root};
    while (!open.empty()) {
        const auto limb = open.back();
        open.pop_back();
        const auto cost = [&](const Option& option) {
            return std::accumulate(option.decide.begin(), option.decide.end(),
                                   priced(option, prices),
                                   [&](double s, std::size_t l) { return s + least[l]; });
        };
        const auto best = std::ranges::min_element(decisions.options[limb], {}, cost);
        for (std::size_t goal = 0; goal < decisions.goals; ++goal)
            sum.help[goal] += help(*best, goal);
        sum.wound_m2 += best->wound_m2;
        open.insert(open.end(), best->decide.begin(), best->decide.end());
    }
    return sum;
}

/// Most wound that any choice makes, m2: the scale of its price.
double scale_m2(const Decisions& decisions)
{
    double sum = 0.0;
    for (const auto& options : decisions.options)
        for (const auto& option : options)
            sum = std::max(sum, option.wound_m2);
    return std::max(sum, 1e-9);
}

} // namespace

Prices noPrices(const Decisions& decisions)
{
    return {std::vector<double>(decisions.goals, 0.0), 0.0};
}

double priced(const Option& option, const Prices& prices)
{
    double cost = option.leaf + prices.wound_1_m2 * option.wound_m2;
    const std::size_t paid = std::min(prices.goals.size(), option.helps.size());
    for (std::size_t goal = 0; goal < paid; ++goal)
        cost -= prices.goals[goal] * option.helps[goal];
    return cost;
}

double atStake(const Decisions& decisions, const Prices& prices)
{
    const double charge =
        prices.wound_1_m2 > 0.0 ? prices.wound_1_m2 * decisions.woundMost_m2 : 0.0;
    return std::accumulate(prices.goals.begin(), prices.goals.end(), -charge);
}

std::vector<double> leastPriced(const Decisions& decisions, const Prices& prices)
{
    return bestSums(
        decisions, kUnbounded, [&](const Option& option) { return priced(option, prices); },
        std::less<>());
}

std::vector<double> mostHelp(const Decisions& decisions, std::size_t goal)
{
    return bestSums(
        decisions, -kUnbounded, [&](const Option& option) { return help(option, goal); },
        std::greater<>());
}

// Held & Karp's way up the bound, which is concave in the prices: a step along what the cheapest
// choice lacks or has too much of, ever shorter.
Prices bestPrices(const Decisions& decisions, const std::vector<bool>& paying)
{
    constexpr int kSteps = 300;
    const bool charges = std::isfinite(decisions.woundMost_m2);
    const double wound_m2 = scale_m2(decisions);
    Prices prices = noPrices(decisions);
    Prices best = prices;
    double bestBound = -kUnbounded;
    double step = 0.2; // of the tree's leaf, for all of a goal
    for (int i = 0; i < kSteps; ++i) {
        const auto least = leastPriced(decisions, prices);
        if (least[decisions.root] == kUnbounded)
            break;
        const double bound = least[decisions.root] + atStake(decisions, prices);
        if (bound > bestBound) {
            bestBound = bound;
            best = prices;
        } else {
            step *= 0.97;
        }
        const auto choice = cheapest(decisions, prices, least);
        for (std::size_t goal = 0; goal < decisions.goals; ++goal)
            if (paying[goal])
                prices.goals[goal] =
                    std::max(0.0, prices.goals[goal] + step * (1.0 - choice.help[goal]));
        if (charges)
            prices.wound_1_m2 = std::max(
                0.0, prices.wound_1_m2 +
                         step * (choice.wound_m2 - decisions.woundMost_m2) / (wound_m2 * wound_m2));
    }
    return best;
}

} // namespace model::advice
