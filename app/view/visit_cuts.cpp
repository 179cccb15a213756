#include "app/view/visit_cuts.hpp"

#include "app/view/visit_form.hpp"

namespace app {

using model::Cut;
using model::CutKind;

bool isOfShoots(CutKind kind)
{
    return kind == CutKind::thinning || kind == CutKind::renewal;
}

std::optional<Cut> changedCut(const Cut& cut, const QString& amount, const Units& units)
{
    Cut made = cut;
    if (isOfShoots(cut.kind)) {
        made.share = units.parseShare(amount);
        return made.share && *made.share > 0.0 && *made.share <= 1.0 ? std::optional(made)
                                                                     : std::nullopt;
    }
    const auto length = units.parseLength_m(amount);
    if (!length || !(*length > 0.0 && *length <= 120.0))
        return std::nullopt;
    if (cut.kind == CutKind::lifting) {
        made.height_m = length;
        return made;
    }
    // A limb that was to go and was only shortened.
    made.kind = CutKind::reduction;
    made.at_m = *length;
    return made;
}

std::vector<Cut> madeCuts(const VisitCuts& cuts, std::span<const Tick> ticks, const Units& units)
{
    std::vector<Cut> made;
    for (std::size_t i = 0; i < cuts.plan.size() && i < ticks.size(); ++i) {
        const auto& tick = ticks[i];
        if (tick.state == Tick::Done)
            made.push_back(cuts.plan[i].cut);
        if (tick.state == Tick::Changed)
            made.push_back(
                changedCut(cuts.plan[i].cut, tick.amount, units).value_or(cuts.plan[i].cut));
    }
    made.insert(made.end(), cuts.byHand.begin(), cuts.byHand.end());
    return made;
}

std::optional<double> tickedLeaf(const VisitCuts& cuts, std::span<const Tick> ticks)
{
    double leaf = 0.0;
    bool any = false;
    for (std::size_t i = 0; i < cuts.plan.size() && i < ticks.size(); ++i) {
        if (ticks[i].state == Tick::Changed)
            return std::nullopt;
        if (ticks[i].state != Tick::Done)
            continue;
        leaf += cuts.plan[i].leafShare;
        any = true;
    }
    return any && cuts.byHand.empty() ? std::optional(leaf) : std::nullopt;
}

QString readCuts(const VisitCuts& cuts, std::span<const Tick> ticks, const QString& leaf,
                 const Units& units, model::Visit& visit)
{
    bool ofPlan = false;
    for (std::size_t i = 0; i < cuts.plan.size(); ++i) {
        const auto& tick = ticks[i];
        ofPlan = ofPlan || tick.state != Tick::Left;
        if (tick.state == Tick::Changed && !changedCut(cuts.plan[i].cut, tick.amount, units))
            return VisitForm::tr("Cut %1 was changed: write how, such as %2.")
                .arg(i + 1)
                .arg(isOfShoots(cuts.plan[i].cut.kind) ? units.share(0.2) : units.length(2.1));
    }
    visit.cuts = madeCuts(cuts, ticks, units);
    for (std::size_t i = 0; ofPlan && i < cuts.plan.size(); ++i)
        if (ticks[i].state == Tick::Left)
            visit.left.push_back(cuts.plan[i].cut);
    visit.leafShare = tickedLeaf(cuts, ticks);
    if (leaf.trimmed().isEmpty())
        return {};
    visit.leafShare = units.parseShare(leaf);
    if (!visit.leafShare || !(*visit.leafShare >= 0.0 && *visit.leafShare <= 1.0))
        return VisitForm::tr("The share of the leaf can't be read: write one such as 8 %.");
    return {};
}

} // namespace app
