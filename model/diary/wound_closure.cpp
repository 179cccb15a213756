#include "model/diary/wound_closure.hpp"

#include "model/growth/measured_growth.hpp"
#include "model/growth/shoot_season.hpp"

#include <algorithm>

namespace model::diary {
namespace {

using std::chrono::sys_days;
using std::chrono::year_month_day;

// Stems thicken through the summer, not in one flush.
constexpr auto kThickening = ShootPattern::longSeason;

constexpr double kHorizon_seasons = 20.0;

std::optional<year_month_day> closedBy(const Wound& wound, double rate_m, const Place& place,
                                       year_month_day made)
{
    const double seasons = wound.diameter_m / rate_m;
    if (seasons >= kHorizon_seasons)
        return std::nullopt;
    return year_month_day{growth::grownBy(kThickening, place, sys_days{made}, seasons)};
}

WoundState state(const Wound& wound, const Visit& visit, double rate_m, const Place& place,
                 year_month_day date)
{
    WoundState one;
    one.visit = visit.id;
    one.made = visit.date;
    one.wound = wound;
    one.seasons = growth::growthClock(kThickening, place, sys_days{date}) -
                  growth::growthClock(kThickening, place, sys_days{visit.date});
    const bool closed = wound.closed && *wound.closed <= date;
    one.open_m = closed ? 0.0 : std::max(0.0, wound.diameter_m - one.seasons * rate_m);
    one.closes = {closedBy(wound, std::max(rate_m, kClosesFast_m), place, visit.date),
                  closedBy(wound, rate_m, place, visit.date),
                  closedBy(wound, kClosesSlowly_m, place, visit.date)};
    one.lingers = !closed && one.seasons >= wound.diameter_m / kClosesSlowly_m + 1.0;
    return one;
}

} // namespace

double closesInASeason_m(const Tree& tree, const Species& species)
{
    if (tree.vigour == Vigour::old || tree.vigour == Vigour::stressed)
        return kClosesSlowly_m;
    switch (species.practice.growth) {
    case Growth::slow:
        return kClosesSlowly_m;
    case Growth::medium:
        return kCloses_m;
    case Growth::fast:
    case Growth::veryFast:
        break;
    }
    return kClosesFast_m;
}

std::vector<WoundState> wounds(const Tree& tree, const Species& species, const Place& place,
                               year_month_day date)
{
    const double rate_m = closesInASeason_m(tree, species);
    std::vector<WoundState> all;
    for (const auto* visit : growth::visitsByDate(tree)) {
        if (visit->date > date)
            break;
        for (const auto& wound : visit->wounds) {
            all.push_back(state(wound, *visit, rate_m, place, date));
            all.back().limbIsThere = limbIndex(tree, wound.limb) != kNoLimb;
        }
    }
    return all;
}

} // namespace model::diary
