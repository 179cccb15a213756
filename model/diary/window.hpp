#pragma once

#include "model/species/species.hpp"

#include <chrono>
#include <optional>

namespace model::diary {

/// Days, both ends included.
struct Window {
    std::chrono::year_month_day from;
    std::chrono::year_month_day to;
    [[nodiscard]] bool holds(std::chrono::year_month_day date) const
    {
        return from <= date && date <= to;
    }
};

/// The run of the species' good months that holds `date`, or the next one after it; months as they
/// come in the garden's hemisphere. Blank: the tables name no good month, or all twelve (D5).
[[nodiscard]] std::optional<Window> goodWindow(const Species& species, double latitude_deg,
                                               std::chrono::year_month_day date);

/// The run of months for which `holds(month)` is true that holds `date`, or the next one after it.
/// Blank: none of them, or all.
template <typename Holds>
[[nodiscard]] std::optional<Window> monthRun(std::chrono::year_month_day date, Holds holds)
{
    using namespace std::chrono;
    const auto none = [&](bool wanted) {
        for (unsigned m = 1; m <= 12; ++m)
            if (holds(month{m}) == wanted)
                return false;
        return true;
    };
    if (none(true) || none(false))
        return std::nullopt;
    year_month first = date.year() / date.month();
    if (holds(first.month()))
        while (holds((first - months{1}).month()))
            first -= months{1};
    else
        while (!holds(first.month()))
            first += months{1};
    year_month last = first;
    while (holds((last + months{1}).month()))
        last += months{1};
    return Window{first / day{1}, year_month_day{last / std::chrono::last}};
}

} // namespace model::diary
