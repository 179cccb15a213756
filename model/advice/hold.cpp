#include "model/advice/hold.hpp"

#include <algorithm>
#include <array>
#include <limits>

namespace model::advice {
namespace {

// Half a foot at a time, to where a raise is no longer a matter of one season.
constexpr std::array kSpares_m{0.0, 0.15, 0.3, 0.45, 0.6, 0.75, 0.9};

/// Days after 1970 on which it is lost, as a mean; never counts as later than any day.
std::chrono::sys_days lost(const growth::Regrowth& regrowth)
{
    return regrowth.middle ? std::chrono::sys_days{*regrowth.middle} : std::chrono::sys_days::max();
}

std::optional<growth::Regrowth> firstLost(const std::vector<growth::Regrowth>& all)
{
    const auto first = std::ranges::min_element(all, {}, lost);
    return first == all.end() ? std::nullopt : std::optional(*first);
}

} // namespace

std::vector<Hold> holds(const Garden& garden, const Tree& tree, const Foliation& foliation,
                        const Species& species, std::chrono::year_month_day date, Aim aim,
                        const Suggestion& known, const std::atomic<bool>* cancel)
{
    std::vector<Hold> all;
    double left_m = -1.0; // what the cuts so far leave to spare over every strip
    for (const double spare : kSpares_m) {
        if (left_m >= spare)
            continue; // the least cuts for less are the least for this as well
        if (cancel && cancel->load(std::memory_order_relaxed))
            break;
        aim.spare_m = spare;
        const auto suggestion = spare == known.spare_m
                                    ? known
                                    : suggest(garden, tree, foliation, species, date, aim, cancel);
        if (suggestion.regrowth.empty())
            break;
        left_m = std::ranges::min(suggestion.regrowth, {}, &growth::Regrowth::spare_m).spare_m;
        all.push_back({spare, suggestion.outcome, suggestion.leafShare, suggestion.cuts.size(),
                       firstLost(suggestion.regrowth)});
        if (suggestion.outcome == Outcome::notWithinGuideline)
            break;
    }
    return all;
}

} // namespace model::advice
