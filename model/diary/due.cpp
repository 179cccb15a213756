#include "model/diary/due.hpp"

#include "model/advice/allowance.hpp"
#include "model/diary/storm_season.hpp"
#include "model/diary/window.hpp"
#include "model/growth/measured_growth.hpp"
#include "model/growth/regrowth.hpp"
#include "model/headroom/headroom.hpp"
#include "model/load/sag.hpp"

#include <algorithm>
#include <tuple>

namespace model::diary {
namespace {

using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::year_month_day;

// A visit this much before the day that the gardener wrote down counts as the one meant; assumed.
constexpr int kNearlyDue_days = 30;

year_month_day shifted(year_month_day date, int by_days)
{
    return year_month_day{sys_days{date} + days{by_days}};
}

DueState stateOf(const Due& due, year_month_day date)
{
    if (date < due.from)
        return DueState::later;
    return due.to && *due.to < date ? DueState::overdue : DueState::now;
}

Due dueFor(const Tree& tree, DueKind kind)
{
    Due due;
    due.tree = tree.id;
    due.kind = kind;
    return due;
}

/// One tree on one day.
struct Case {
    const Garden& garden;
    const Tree& tree;
    const Foliation& foliation;
    const Species& species;
    const growth::ShootRate& rate;
    year_month_day date;
};

/// The day as of which the sketch shows the tree: that of the newest visit that cut it.
year_month_day sketchedOn(const Tree& tree, year_month_day date)
{
    year_month_day newest = date;
    bool any = false;
    for (const auto& visit : tree.visits)
        if (!visit.limbsBefore.empty() && visit.date <= date && (!any || visit.date > newest)) {
            newest = visit.date;
            any = true;
        }
    return newest;
}

void setDays(Due& due, double spare_m, const growth::GrownOn& lost, year_month_day from,
             year_month_day date)
{
    if (spare_m <= 0.0) {
        due.from = from;
        due.to = from;
        due.state = DueState::overdue;
        return;
    }
    due.from = lost.early.value_or(from);
    due.middle = lost.middle;
    due.to = lost.late;
    const bool halfLost = due.middle && *due.middle <= date;
    due.state = halfLost ? DueState::overdue : stateOf(due, date);
}

/// What is to be expected of one strip from what a tape said.
std::optional<Due> fromTape(const Case& c, const Strip& strip, const growth::LeftOver& left,
                            double underside)
{
    const double needed = headroom::neededHeadroom_m(strip);
    const double spare = left.height_m - needed;
    const auto lost =
        growth::grownOn(std::max(0.0, spare) / underside, c.rate, c.species.practice.shootPattern,
                        c.garden.place, left.date, c.tree.leafDates);
    if (spare > 0.0 && !lost.early)
        return std::nullopt;
    Due due = dueFor(c.tree, DueKind::headroom);
    due.subject = strip.id;
    due.height_m = left.height_m;
    due.needed_m = needed;
    due.measured = true;
    setDays(due, spare, lost, left.date, c.date);
    return due;
}

std::optional<Due> fromSketch(const Case& c, const Strip& strip, const growth::Regrowth& down,
                              year_month_day sketched)
{
    if (down.spare_m > 0.0 && !down.early)
        return std::nullopt;
    Due due = dueFor(c.tree, DueKind::headroom);
    due.subject = strip.id;
    due.height_m = down.height_m;
    due.needed_m = headroom::neededHeadroom_m(strip);
    setDays(due, down.spare_m, {down.early, down.middle, down.late}, sketched, c.date);
    return due;
}

void addHeadroom(const Case& c, std::vector<Due>& all)
{
    const auto sketched = sketchedOn(c.tree, c.date);
    const auto sagging = load::sagUnder(c.tree, c.foliation, c.species, load::kHeaviest).tree;
    for (const auto& down : growth::regrowth(c.garden, sagging, c.species, c.rate, sketched)) {
        const auto& strip = *std::ranges::find(c.garden.strips, down.strip, &Strip::id);
        const auto left = growth::leftOver(c.tree, down.strip, c.date);
        const double underside = growth::undersideShare(c.tree.limbs[limbIndex(c.tree, down.limb)]);
        const auto due = left && underside > 0.0 ? fromTape(c, strip, *left, underside)
                                                 : fromSketch(c, strip, down, sketched);
        if (due)
            all.push_back(*due);
    }
}

/// The first day on which the guideline lets anything be cut again.
year_month_day firstAllowed(const Case& c)
{
    year_month_day day = c.date;
    while (advice::allowance(c.tree, c.species, day).share <= 0.0 && day < shifted(c.date, 400))
        day = shifted(day, 1);
    return day;
}

void addWindow(const Case& c, const StillToDo& plan, std::vector<Due>& all)
{
    if (!plan.any())
        return;
    // What the guideline forbids today waits until it doesn't.
    const auto earliest = plan.cuts > 0 ? c.date : firstAllowed(c);
    const auto window = goodWindow(c.species, c.garden.place.latitude_deg, earliest);
    Due due = dueFor(c.tree, DueKind::window);
    due.cuts = plan.cuts;
    due.from = window ? std::max(window->from, earliest) : earliest;
    // In the middle of a window its true first day is past: that is not overdue.
    if (window) {
        if (earliest == c.date)
            due.from = window->from;
        due.to = window->to;
    }
    due.state = stateOf(due, c.date);
    all.push_back(std::move(due));
}

bool visitedWithin(const Tree& tree, year_month_day from, year_month_day to)
{
    return std::ranges::any_of(
        tree.visits, [&](const Visit& visit) { return from <= visit.date && visit.date <= to; });
}

void addStorm(const Case& c, std::vector<Due>& all)
{
    auto season = stormSeason(c.garden.place, c.date);
    if (!season)
        return;
    if (visitedWithin(c.tree, shifted(season->from, -kLookedBefore_days), c.date))
        season = stormSeason(c.garden.place, shifted(season->to, 1));
    Due due = dueFor(c.tree, DueKind::storm);
    due.from = shifted(season->from, -kLookBefore_days);
    due.to = shifted(season->from, -1);
    due.state = stateOf(due, c.date);
    all.push_back(std::move(due));
}

/// The newest day that was written down and that no later visit has answered.
void addWritten(const Case& c, std::vector<Due>& all)
{
    const Visit* open = nullptr;
    for (const auto* visit : growth::visitsByDate(c.tree)) {
        if (visit->date > c.date)
            break;
        if (open && visit->date >= shifted(*open->nextDue, -kNearlyDue_days))
            open = nullptr;
        if (visit->nextDue)
            open = visit;
    }
    if (!open)
        return;
    Due due = dueFor(c.tree, DueKind::written);
    due.subject = open->id;
    due.from = *open->nextDue;
    due.to = *open->nextDue;
    due.state = stateOf(due, c.date);
    all.push_back(std::move(due));
}

} // namespace

std::vector<Due> dueOf(const Garden& garden, const Tree& tree, const Foliation& foliation,
                       const Species& species, const growth::ShootRate& rate, const StillToDo& plan,
                       year_month_day date)
{
    const Case c{garden, tree, foliation, species, rate, date};
    std::vector<Due> all;
    addHeadroom(c, all);
    addWindow(c, plan, all);
    addStorm(c, all);
    addWritten(c, all);
    sortByUrgency(all);
    return all;
}

void sortByUrgency(std::vector<Due>& all)
{
    std::ranges::stable_sort(
        all, {}, [](const Due& due) { return std::pair(due.state, sys_days{due.from}); });
}

double takenLately(const Tree& tree, year_month_day date)
{
    double taken = 0.0;
    for (const auto& visit : tree.visits)
        if (visit.date <= date && visit.date > shifted(date, -365))
            taken += visit.leafShare.value_or(0.0);
    return std::min(taken, 1.0);
}

} // namespace model::diary
