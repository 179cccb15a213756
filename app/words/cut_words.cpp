#include "app/words/cut_words.hpp"

#include "app/words/finding_list.hpp"
#include "app/words/work_words.hpp"
#include "model/advice/limits.hpp"

#include <algorithm>

namespace app {
namespace {

using model::CutKind;
using model::advice::Outcome;
using model::advice::PlannedCut;
using model::advice::Suggestion;

QString removal(const PlannedCut& planned, const Wording& wording)
{
    const auto& limbs = wording.tree.limbs;
    const auto limb = limbs.at(limbIndex(wording.tree, planned.cut.limb));
    const QString name = limbName(wording, limb.id);
    const QString height = wording.units.roughLength(planned.aboveGround_m);
    if (!limb.parent)
        return Words::tr("Take off %1, %2 above the ground.").arg(name, height);
    return Words::tr("Take off %1 where it grows from %2, %3 above the ground, just outside the "
                     "branch collar: neither flush with the wood behind it nor with a stub.")
        .arg(name, limbName(wording, *limb.parent), height);
}

QString reduction(const PlannedCut& planned, const Wording& wording)
{
    const QString where = wording.units.length(planned.cut.at_m);
    const QString height = wording.units.roughLength(planned.aboveGround_m);
    const QString name = limbName(wording, planned.cut.limb);
    if (planned.cleans && planned.lateral.empty())
        return Words::tr(
                   "Cut the dead end off %1, %2 from its union, %3 above the ground: dead wood "
                   "only, up to the swollen ring where it lives.")
            .arg(name, where, height);
    if (planned.lateral.empty())
        return Words::tr("Shorten %1 to %2 from its union, %3 above the ground.")
            .arg(name, where, height);
    return Words::tr("Shorten %1 back to its side branch %2, %3 from the union and %4 above the "
                     "ground; %2 takes over. Cut just outside the ridge of bark between the two, "
                     "without a stub.")
        .arg(name, limbName(wording, planned.lateral), where, height);
}

/// That no cuts are known to do it, and how sure that is.
QString notWithinGuideline(const Suggestion& suggestion)
{
    const bool headroomOnly = suggestion.goals.empty();
    if (suggestion.refuted)
        return headroomOnly
                   ? Words::tr("The headroom can't be had inside the guideline.")
                   : Words::tr("Not all that must be done can be had inside the guideline.");
    return headroomOnly
               ? Words::tr("No cuts inside the guideline were found that give the headroom; the "
                           "search was cut short, so there may be some.")
               : Words::tr("No cuts inside the guideline were found that do all that must be done; "
                           "the search was cut short, so there may be some.");
}

} // namespace

QString cutKindWords(CutKind kind)
{
    switch (kind) {
    case CutKind::removal:
        return Words::tr("removal cut");
    case CutKind::reduction:
        return Words::tr("reduction cut");
    case CutKind::thinning:
        return Words::tr("thinning");
    case CutKind::lifting:
        return Words::tr("lifting");
    case CutKind::renewal:
        return Words::tr("renewal");
    }
    return {};
}

QString cutKindWords(const PlannedCut& planned)
{
    const QString kind = cutKindWords(planned.cut.kind);
    if (!planned.cleans)
        return kind;
    if (planned.fault == model::DefectKind::dead)
        return Words::tr("cleaning, dead wood, %1", "a kind of cut").arg(kind);
    if (planned.fault == model::DefectKind::broken)
        return Words::tr("cleaning, broken wood, %1", "a kind of cut").arg(kind);
    if (planned.fault == model::DefectKind::rubbing)
        return Words::tr("cleaning, rubbing wood, %1", "a kind of cut").arg(kind);
    return Words::tr("cleaning, %1", "a kind of cut").arg(kind);
}

QString instruction(const PlannedCut& planned, const Wording& wording)
{
    const QString name = limbName(wording, planned.cut.limb);
    switch (planned.cut.kind) {
    case CutKind::removal:
        return removal(planned, wording);
    case CutKind::reduction:
        return reduction(planned, wording);
    case CutKind::thinning:
        return Words::tr(
                   "Thin the small shoots of %1 by %2, evenly along it, from the tip inwards.")
            .arg(name, wording.units.share(planned.cut.share.value_or(0)));
    case CutKind::renewal:
        return Words::tr("Renew the fruiting wood of %1: take %2 of last year's shoots, upright "
                         "ones first, and cut old fruiting wood back to young shoots.")
            .arg(name, wording.units.share(planned.cut.share.value_or(0)));
    case CutKind::lifting:
        return Words::tr("Shorten the hanging shoots of %1 to %2 above the ground, each to a bud "
                         "or side shoot.")
            .arg(name, wording.units.length(planned.cut.height_m.value_or(0)));
    }
    return {};
}

QString measures(const PlannedCut& planned, const Wording& wording)
{
    const Units& units = wording.units;
    const QString share = units.share(planned.leafShare);
    if (planned.cleans)
        return Words::tr("Wound %1 across; what comes off is %2 long and weighs about %3; not "
                         "counted as leaf.")
            .arg(units.diameter(planned.diameter_m), units.roughLength(planned.length_m),
                 units.mass(planned.mass_kg));
    if (planned.diameter_m <= 0)
        return Words::tr("About %1 of shoots come off; %2 of the leaf.")
            .arg(units.mass(planned.mass_kg), share);
    return Words::tr(
               "Wound %1 across; what comes off is %2 long and weighs about %3; %4 of the leaf.")
        .arg(units.diameter(planned.diameter_m), units.roughLength(planned.length_m),
             units.mass(planned.mass_kg), share);
}

QString outcomeWords(const Suggestion& suggestion, const Wording& wording)
{
    const Units& units = wording.units;
    switch (suggestion.outcome) {
    case Outcome::nothingNeeded:
        if (!suggestion.goals.empty())
            return Words::tr("Nothing has to be cut for headroom or for what must be reached.");
        return Words::tr("Nothing has to be cut for headroom.");
    case Outcome::met:
        if (std::ranges::all_of(suggestion.cuts, &PlannedCut::cleans))
            return Words::tr("The tree only has to be cleaned: dead, broken or rubbing wood goes, "
                             "which is not counted as leaf.");
        if (!suggestion.goals.empty())
            return Words::tr("These cuts do what must be done, for %1 of the leaf; up to %2 may go "
                             "now.")
                .arg(units.share(suggestion.leafShare), units.share(suggestion.allowance));
        return Words::tr("These cuts give every strip its headroom for %1 of the leaf; up to %2 "
                         "may go now.")
            .arg(units.share(suggestion.leafShare), units.share(suggestion.allowance));
    case Outcome::notWithinGuideline:
        break;
    }
    QString text = notWithinGuideline(suggestion);
    if (!suggestion.cuts.empty())
        text += QLatin1Char(' ') +
                Words::tr("These cuts come closest, for %1 of the leaf; up to %2 may go now.")
                    .arg(units.share(suggestion.leafShare), units.share(suggestion.allowance));
    if (!suggestion.leafShareWithoutGuideline)
        return text;
    // One figure for one thing: where the season's share binds, what all of it takes with every
    // other rule kept is told with that rule.
    const bool told =
        std::any_of(suggestion.binding.begin(), suggestion.binding.end(), [](const auto& finding) {
            return finding.rule == model::advice::Rule::seasonShare && finding.found;
        });
    if (told)
        text += QLatin1Char(' ') + Words::tr("Spread it over several years, or ask an arborist.");
    else
        text += QLatin1Char(' ') +
                Words::tr("If no rule of the guideline were kept, it would cost %1 of the leaf: "
                          "ask an arborist.")
                    .arg(units.share(*suggestion.leafShareWithoutGuideline));
    return text;
}

QStringList jobNotes(const Suggestion& suggestion, const Wording& wording)
{
    QStringList notes;
    if (std::ranges::any_of(suggestion.cuts, &PlannedCut::cleans))
        notes << Words::tr(
            "Clean first: what the list calls cleaning takes dead, broken or rubbing "
            "wood and is not counted as leaf. Look at the tree again before you go "
            "on.");
    const bool thick =
        std::any_of(suggestion.cuts.begin(), suggestion.cuts.end(), [](const PlannedCut& cut) {
            return cut.diameter_m > model::advice::kThreeCuts_m;
        });
    if (thick)
        notes << Words::tr("Take anything thicker than %1 in three cuts, so that the bark does "
                           "not tear: a third through from below, then off from above a little "
                           "further out, then the stub at the collar.")
                     .arg(wording.units.diameter(model::advice::kThreeCuts_m));
    if (!suggestion.cuts.empty()) {
        if (const auto tools = toolsOf(suggestion.cuts); !tools.isEmpty())
            notes << Words::tr("Take along: %1.").arg(listed(wording.units, tools));
        notes << debrisWords(suggestion.debris, wording);
    }
    return notes + sentences(suggestion.notes, wording);
}

} // namespace app
