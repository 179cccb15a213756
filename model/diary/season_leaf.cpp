#include "model/diary/season_leaf.hpp"

#include "model/advice/allowance.hpp"
#include "model/growth/measured_growth.hpp"

#include <algorithm>

namespace model::diary {

using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::year_month_day;

std::vector<SeasonLeaf> leafBySeason(const Tree& tree, const Species& species, const Place& place,
                                     year_month_day date)
{
    const double guideline = advice::seasonShare(tree, species);
    const auto visits = growth::visitsByDate(tree);
    const bool any = !visits.empty() && visits.front()->date <= date;
    std::vector<SeasonLeaf> all;
    auto season = growingYear(tree.leafDates, place, any ? visits.front()->date : date);
    while (season.from <= date) {
        all.push_back({season, 0.0, guideline, 0});
        season = growingYear(tree.leafDates, place, year_month_day{sys_days{season.to} + days{1}});
    }
    for (const auto* visit : visits) {
        if (visit->date > date)
            break;
        auto& its = *std::ranges::find_if(
            all, [&](const SeasonLeaf& one) { return visit->date <= one.season.to; });
        its.taken += visit->leafShare.value_or(0.0);
        if (!visit->leafShare && !visit->cuts.empty())
            ++its.unknown;
    }
    return all;
}

} // namespace model::diary
