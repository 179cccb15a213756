#include "model/diary/record.hpp"

#include "model/advice/prune.hpp"
#include "model/growth/measured_growth.hpp"

#include <algorithm>
#include <set>

namespace model::diary {
namespace {

/// With zeros in front, to so many figures.
std::string figures(unsigned number, std::size_t count)
{
    const std::string plain = std::to_string(number);
    return std::string(count - std::min(count, plain.size()), '0') + plain;
}

std::string isoDate(std::chrono::year_month_day date)
{
    return figures(static_cast<unsigned>(static_cast<int>(date.year())), 4) + '-' +
           figures(static_cast<unsigned>(date.month()), 2) + '-' +
           figures(static_cast<unsigned>(date.day()), 2);
}

/// The wound of one cut; of no width: none.
Wound woundOf(const Tree& tree, const Cut& cut)
{
    const auto index = limbIndex(tree, cut.limb);
    if (index == kNoLimb)
        return {};
    const Limb& limb = tree.limbs[index];
    Wound wound;
    if (cut.kind == CutKind::removal && limb.parent) {
        wound.limb = *limb.parent;
        wound.at_m = limb.attachedAt_m;
        wound.diameter_m = limb.stations.front().diameter_m;
    } else if (cut.kind == CutKind::reduction) {
        wound.limb = cut.limb;
        wound.at_m = cut.at_m;
        wound.diameter_m = axisPoint(limb, cut.at_m).diameter_m;
    }
    return wound;
}

/// The limbs of `before` that `after` lacks or holds otherwise.
std::vector<Limb> changed(const Tree& before, const Tree& after)
{
    std::vector<Limb> all;
    for (const auto& limb : before.limbs) {
        const auto index = limbIndex(after, limb.id);
        if (index == kNoLimb || after.limbs[index] != limb)
            all.push_back(limb);
    }
    return all;
}

/// Where the noted tips are after the cuts: those of limbs that were cut as they are drawn then,
/// the others where they were.
void fillTips(std::vector<TipRecord>& tips, const Tree& before, const Tree& after)
{
    for (auto& tip : tips) {
        const auto was = limbIndex(before, tip.limb);
        const auto is = limbIndex(after, tip.limb);
        if (tip.after_m || was == kNoLimb || is == kNoLimb)
            continue;
        const auto& stations = after.limbs[is].stations;
        tip.after_m = before.limbs[was].stations == stations
                          ? tip.before_m
                          : std::optional(stations.back().position_m);
    }
}

/// Limbs whose parent is not drawn any more can't be shown.
void dropOrphans(Tree& tree)
{
    const auto orphans = [&tree] {
        std::set<std::string> ids;
        for (const auto& limb : tree.limbs)
            ids.insert(limb.id);
        return std::erase_if(tree.limbs, [&ids](const Limb& limb) {
            return limb.parent && !ids.contains(*limb.parent);
        });
    };
    while (orphans() > 0) {
    }
}

Tree putBack(const Tree& after, const std::vector<Limb>& limbs)
{
    Tree before = after;
    for (const auto& limb : limbs) {
        const auto index = limbIndex(before, limb.id);
        if (index == kNoLimb)
            before.limbs.push_back(limb);
        else
            before.limbs[index] = limb;
    }
    dropOrphans(before);
    return before;
}

} // namespace

std::string visitId(const Tree& tree, std::chrono::year_month_day date)
{
    const auto taken = [&tree](const std::string& id) {
        return std::ranges::find(tree.visits, id, &Visit::id) != tree.visits.end();
    };
    const std::string plain = isoDate(date);
    std::string id = plain;
    for (int count = 2; taken(id); ++count)
        id = plain + "-" + std::to_string(count);
    return id;
}

std::vector<Wound> woundsOf(const Tree& tree, const std::vector<Cut>& cuts)
{
    std::vector<Wound> all;
    for (const auto& cut : cuts) {
        auto wound = woundOf(tree, cut);
        const bool stays = std::ranges::none_of(cuts, [&](const Cut& other) {
            return other.kind == CutKind::removal && other.limb == wound.limb;
        });
        if (wound.diameter_m > 0.0 && stays)
            all.push_back(std::move(wound));
    }
    return all;
}

Tree withVisit(Tree tree, Visit visit, bool cutSketch)
{
    if (visit.id.empty())
        visit.id = visitId(tree, visit.date);
    if (visit.wounds.empty())
        visit.wounds = woundsOf(tree, visit.cuts);
    if (cutSketch) {
        Tree after = advice::afterCuts(tree, visit.cuts);
        visit.limbsBefore = changed(tree, after);
        fillTips(visit.tips, tree, after);
        tree = std::move(after);
    }
    const auto later = std::ranges::find_if(
        tree.visits, [&visit](const Visit& other) { return other.date > visit.date; });
    tree.visits.insert(later, std::move(visit));
    return tree;
}

std::vector<Sketches> sketches(const Tree& tree)
{
    auto visits = growth::visitsByDate(tree);
    std::ranges::reverse(visits);
    std::vector<Sketches> all;
    Tree after = tree;
    for (const auto* visit : visits) {
        Tree before = putBack(after, visit->limbsBefore);
        all.push_back({visit->id, before, std::move(after)});
        after = std::move(before);
    }
    return all;
}

} // namespace model::diary
