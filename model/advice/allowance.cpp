#include "model/advice/allowance.hpp"

#include "model/advice/fruit_wood.hpp"
#include "model/advice/limits.hpp"

#include <algorithm>

namespace model::advice {
namespace {

using std::chrono::sys_days;
using std::chrono::year_month_day;

bool inLastTwelveMonths(year_month_day visit, year_month_day date)
{
    const auto yearBefore = date - std::chrono::years{1};
    // 29 February has no day a year before it: then the month's last day counts.
    const sys_days from =
        yearBefore.ok() ? sys_days{yearBefore}
                        : sys_days{yearBefore.year() / yearBefore.month() / std::chrono::last};
    return sys_days{visit} > from && sys_days{visit} <= sys_days{date};
}

} // namespace

double seasonShare(const Tree& tree, const Species& species)
{
    const bool weak = tree.vigour == Vigour::old || tree.vigour == Vigour::stressed;
    if (const auto renewal = yearlyRenewal(species.latin);
        !weak && renewal && renewal->most > kSeasonShare)
        return renewal->most; // a peach: all its leaf grows from last year's shoots
    const double usual = weak ? kSeasonShareWeak : kSeasonShare;
    return std::min(usual, species.practice.maxAnnualRemoval.value_or(usual));
}

int northernMonth(std::chrono::month month, double latitude_deg)
{
    const auto number = static_cast<int>(static_cast<unsigned>(month));
    return latitude_deg >= 0.0 ? number : (number + 5) % 12 + 1;
}

Allowance allowance(const Tree& tree, const Species& species, year_month_day date)
{
    Allowance result{seasonShare(tree, species), {}};
    if (tree.vigour == Vigour::old || tree.vigour == Vigour::stressed)
        result.reasons.push_back(
            {Rule::stressedTree, Severity::warn, {}, std::nullopt, kSeasonShareWeak});
    result.reasons.push_back({Rule::seasonShare, Severity::inform, {}, std::nullopt, result.share});
    for (const auto& visit : tree.visits) {
        if (!inLastTwelveMonths(visit.date, date) || (visit.cuts.empty() && !visit.leafShare))
            continue;
        result.reasons.push_back({Rule::seasonShare,
                                  visit.leafShare ? Severity::inform : Severity::warn, visit.id,
                                  visit.leafShare, std::nullopt});
        result.share -= visit.leafShare.value_or(0.0);
    }
    result.share = std::max(0.0, result.share);
    return result;
}

std::vector<Finding> calendarNotes(const Species& species, double latitude_deg, year_month_day date)
{
    const int month = northernMonth(date.month(), latitude_deg);
    const auto number = static_cast<double>(static_cast<unsigned>(date.month()));
    std::vector<Finding> notes;
    if (std::ranges::find(species.practice.avoidMonthsNorth, month) !=
        species.practice.avoidMonthsNorth.end())
        notes.push_back({Rule::monthToAvoid, Severity::warn, {}, number, std::nullopt});
    if (species.latin.starts_with("Prunus "))
        notes.push_back({Rule::dryWeather, Severity::warn, {}, std::nullopt, std::nullopt});
    if (month >= 3 && month <= 8)
        notes.push_back({Rule::nestingSeason, Severity::block, {}, number, std::nullopt});
    return notes;
}

std::optional<Finding> oakWiltNote(const Species& species, const Place& place, year_month_day date)
{
    const auto within = [](double value, double low, double high) {
        return value >= low && value <= high;
    };
    const double east = place.longitude_deg;
    const double north = place.latitude_deg;
    // Where the disease is known, by and large; from memory.
    const bool texas = within(east, -106.7, -93.5) && within(north, 25.8, 36.5);
    const bool others = within(east, -104.0, -72.0) && within(north, 32.0, 49.0);
    if (!species.latin.starts_with("Quercus ") || !(texas || others))
        return std::nullopt;
    const auto month = static_cast<unsigned>(date.month());
    if (texas ? month < 2 || month > 6 : month < 4 || month > 7)
        return std::nullopt;
    return Finding{
        Rule::oakWilt, Severity::block, {}, static_cast<double>(month), texas ? 6.0 : 7.0};
}

} // namespace model::advice
