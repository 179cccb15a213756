#include "app/words/finding_words.hpp"

#include "model/advice/limits.hpp"

#include <algorithm>

namespace app {
namespace {

using model::advice::Finding;
using model::advice::Rule;

/// What the sentences are made of.
struct Parts {
    const Finding& finding;
    const Wording& wording;

    [[nodiscard]] QString who() const { return subjectName(wording, finding.subject); }

    [[nodiscard]] QString share(const std::optional<double>& value) const
    {
        return value ? wording.units.share(*value) : unknown();
    }
    [[nodiscard]] QString rough(const std::optional<double>& value) const
    {
        return value ? wording.units.roughLength(*value) : unknown();
    }
    [[nodiscard]] QString diameter(const std::optional<double>& value) const
    {
        return value ? wording.units.diameter(*value) : unknown();
    }
    [[nodiscard]] QString mass(const std::optional<double>& value) const
    {
        return value ? wording.units.mass(*value) : unknown();
    }
    [[nodiscard]] QString angle(const std::optional<double>& value) const
    {
        return value ? wording.units.angle(*value) : unknown();
    }
    [[nodiscard]] QString month(const std::optional<double>& value) const
    {
        return value ? wording.units.month(static_cast<int>(*value)) : unknown();
    }
    [[nodiscard]] static QString unknown() { return Words::tr("an unknown amount"); }
};

/// A visit made in the last twelve months, which counts against this one.
QString earlierVisit(const Parts& p)
{
    const auto& visits = p.wording.tree.visits;
    const auto visit = std::ranges::find(visits, p.finding.subject, &model::Visit::id);
    const QString when =
        visit == visits.end() ? Words::tr("an earlier date") : p.wording.units.date(visit->date);
    if (!p.finding.found)
        return Words::tr("The visit on %1 took leaf as well, but how much was not written down: "
                         "cut less than the allowance says.")
            .arg(when);
    return Words::tr("The visit on %1 has taken %2 of the leaf already.")
        .arg(when, p.share(p.finding.found));
}

QString seasonShare(const Parts& p)
{
    if (!p.finding.subject.empty())
        return earlierVisit(p);
    if (!p.finding.found)
        return Words::tr("The guideline lets at most %1 of this tree's leaf go within twelve "
                         "months.")
            .arg(p.share(p.finding.limit));
    return Words::tr("It would take %1 of the leaf, and %2 may go now.")
        .arg(p.share(p.finding.found), p.share(p.finding.limit));
}

QString limbShare(const Parts& p)
{
    if (!p.finding.found)
        return Words::tr("A limb should not lose more than half of its leaf by shortening: then "
                         "the whole limb goes, or it stays.");
    return Words::tr("Shortening takes %1 of the leaf of %2; over %3 is much for one limb.")
        .arg(p.share(p.finding.found), p.who(), p.share(p.finding.limit));
}

QString lowerTwoThirds(const Parts& p)
{
    if (!p.finding.found)
        return Words::tr("Half of the leaf belongs in the lower two thirds of the crown, and more "
                         "cutting low down would leave less.");
    return Words::tr("%1 of the leaf would be left in the lower two thirds of the crown; at least "
                     "%2 belongs there.")
        .arg(p.share(p.finding.found), p.share(p.finding.limit));
}

QString liveCrownRatio(const Parts& p)
{
    if (!p.finding.found)
        return Words::tr("Lifting the crown further would leave too little living crown for the "
                         "tree's height.");
    return Words::tr("The living crown would take up %1 of the tree's height; at least %2 is "
                     "better.")
        .arg(p.share(p.finding.found), p.share(p.finding.limit));
}

QString woundSum(const Parts& p)
{
    if (!p.finding.found)
        return Words::tr("All wounds together would come to more than a third of the stem's "
                         "section, which is severe.");
    return Words::tr("All wounds together come to %1 of the stem's section; more than %2 is "
                     "severe.")
        .arg(p.share(p.finding.found), p.share(p.finding.limit));
}

/// How much of the tree goes.
QString amountSentence(const Parts& p)
{
    const Finding& f = p.finding;
    switch (f.rule) {
    case Rule::seasonShare:
        return seasonShare(p);
    case Rule::stressedTree:
        return Words::tr("This tree is old or under stress: about %1 of its leaf is all that "
                         "should go in a year.")
            .arg(p.share(f.limit));
    case Rule::ordinaryShare:
        return Words::tr("%1 of the leaf is more than the %2 of an ordinary year: expect the tree "
                         "to answer with strong new shoots.")
            .arg(p.share(f.found), p.share(f.limit));
    case Rule::limbShare:
        return limbShare(p);
    case Rule::woundSum:
        return woundSum(p);
    default:
        return {};
    }
}

/// What shape is left.
QString shapeSentence(const Parts& p)
{
    const Finding& f = p.finding;
    switch (f.rule) {
    case Rule::lowerTwoThirds:
        return lowerTwoThirds(p);
    case Rule::liveCrownRatio:
        return liveCrownRatio(p);
    case Rule::raiseStep:
        return Words::tr("The crown would be lifted by %1 of its height at once; %2 a visit is "
                         "kinder.")
            .arg(p.share(f.found), p.share(f.limit));
    case Rule::balance:
        if (!f.found)
            return Words::tr(
                "More cutting on one side would leave the crown hanging to the other.");
        return Words::tr("The weight of the crown, or its hold on the wind, would move %1 of the "
                         "crown's reach to one side; over %2 is much.")
            .arg(p.share(f.found), p.share(f.limit));
    case Rule::topping:
        return Words::tr("The stem would be cut where no side branch can take over: that is "
                         "topping, which starves the tree and lets rot in.");
    case Rule::lateralThird:
        if (f.severity == model::advice::Severity::block)
            return f.found.value_or(0.0) <= 0.0
                       ? Words::tr(
                             "No side branch grows where %1 would be cut: that leaves a stub.")
                             .arg(p.who())
                       : Words::tr("The side branch that would take over from %1 is only %2 as "
                                   "thick as the cut; a third is the least.")
                             .arg(p.who(), p.share(f.found));
        return Words::tr("%1 takes over and is %2 as thick as the cut; a half or more would be "
                         "better.")
            .arg(p.who(), p.share(f.found));
    case Rule::lionTail:
        if (!f.found)
            return Words::tr("%1 would be stripped inside and keep its leaf at the end only, which "
                             "makes it whip and break.")
                .arg(p.who());
        if (f.severity == model::advice::Severity::inform)
            return Words::tr(
                       "Cut as well so that %1 keeps leaf inside: without this cut the others "
                       "would leave it only %2 of its leaf on its inner two thirds.")
                .arg(p.who(), p.share(f.found));
        return Words::tr("%1 would keep only %2 of its leaf on its inner two thirds: under %3 it "
                         "is stripped to a tail, whips and breaks more easily. Leave inner side "
                         "branches on it.")
            .arg(p.who(), p.share(f.found), p.share(f.limit));
    case Rule::renewFruitWood:
        if (!f.found || !f.limit)
            return Words::tr("Besides these cuts a fruit tree is renewed each year: some of last "
                             "year's shoots go, with old fruiting wood.");
        return Words::tr("Besides these cuts, renew the fruiting wood of %1 each year: about %2 of "
                         "last year's shoots go, upright ones that fill the open middle of the "
                         "crown first, then old fruiting wood back to young shoots.")
            .arg(commonName(p.wording.species),
                 p.share(f.found) == p.share(f.limit)
                     ? p.share(f.found)
                     : Words::tr("%1 to %2", "two shares").arg(p.share(f.found), p.share(f.limit)));
    case Rule::rubbingLimbs:
        return Words::tr("%1 touches another limb or nearly so away from their fork, and they rub "
                         "each other's bark off. Where that is so in the tree too, one of them "
                         "goes first of all, as dead and broken wood does: the thinner or the "
                         "worse placed. Mark that one as rubbing.")
            .arg(p.who());
    case Rule::openMiddle:
        return Words::tr("%1 stands upright in the middle of the crown: without it light and air "
                         "reach the fruiting wood of the scaffold limbs.")
            .arg(p.who());
    case Rule::renewalShare:
        if (f.severity == model::advice::Severity::inform)
            return Words::tr("%1 of last year's shoots is less than the %2 that this fruit is "
                             "usually renewed by: expect less young fruiting wood.")
                .arg(p.share(f.found), p.share(f.limit));
        return Words::tr("%1 of last year's shoots is more than the %2 that this fruit is usually "
                         "renewed by: expect strong new shoots and less fruit.")
            .arg(p.share(f.found), p.share(f.limit));
    case Rule::bareConifer:
        return Words::tr("%1 would be cut back to wood without green, and most conifers don't "
                         "shoot from bare wood: it stays bare.")
            .arg(p.who());
    case Rule::branchToStem:
        return Words::tr("%1 is %2 as thick as the wood it grows from: over %3 the wound closes "
                         "badly, so shortening it would be better.")
            .arg(p.who(), p.share(f.found), p.share(f.limit));
    default:
        return {};
    }
}

/// How large a wound or a piece is, and how high.
QString sizeSentence(const Parts& p)
{
    const Finding& f = p.finding;
    switch (f.rule) {
    case Rule::cutOver50mm:
        return Words::tr("The wound on %1 is %2 across: over %3 it closes slowly and decay can "
                         "enter.")
            .arg(p.who(), p.diameter(f.found), p.diameter(f.limit));
    case Rule::cutOver100mm:
        return Words::tr("The wound on %1 is %2 across: a cut over %3 is an arborist's decision.")
            .arg(p.who(), p.diameter(f.found), p.diameter(f.limit));
    case Rule::poorHealer:
        return Words::tr("The wound on %1 is %2 across, and this species walls off decay poorly: "
                         "over %3 ask an arborist.")
            .arg(p.who(), p.diameter(f.found), p.diameter(f.limit));
    case Rule::overHead:
        return Words::tr("The cut on %1 is %2 above the ground, beyond the %3 that a hand saw "
                         "reaches with both feet on the ground.")
            .arg(p.who(), p.rough(f.found), p.rough(f.limit));
    case Rule::beyondPoleSaw:
        return Words::tr("The cut on %1 is %2 above the ground, beyond the %3 that a pole saw "
                         "reaches: it needs trained climbing or a platform.")
            .arg(p.who(), p.rough(f.found), p.rough(f.limit));
    case Rule::heavyPiece:
        return Words::tr("The piece from %1 weighs about %2, more than the %3 that one person "
                         "should hold.")
            .arg(p.who(), p.mass(f.found), p.mass(f.limit));
    case Rule::veryHeavyPiece:
        return Words::tr("The piece from %1 weighs about %2: over %3 it must be lowered on ropes "
                         "by trained people.")
            .arg(p.who(), p.mass(f.found), p.mass(f.limit));
    default:
        return {};
    }
}

QString warningSigns(const Parts& p)
{
    QStringList signs;
    for (const model::Observation& observation : p.wording.tree.observations)
        signs << signWords(observation.sign);
    signs.removeDuplicates();
    if (signs.isEmpty())
        return Words::tr("A warning sign was noted for this tree.");
    return Words::tr("Noted for this tree: %1. That needs a professional's eyes.")
        .arg(listed(p.wording.units, signs));
}

QString nearLine(const Parts& p)
{
    const bool ask = p.finding.limit == model::advice::kLineAskFirst_m;
    if (ask && p.finding.severity == model::advice::Severity::block)
        return Words::tr("The work is %1 on plan from the wire %2: here nothing starts inside %3 "
                         "before the line's operator has been asked. Treat it as live.")
            .arg(p.rough(p.finding.found), p.who(), p.rough(p.finding.limit));
    if (p.finding.severity == model::advice::Severity::block)
        return Words::tr("A piece or a tool can come within %1 of the wire %2. Inside %3 nobody "
                         "may work but the line's operator or a line-clearance arborist: treat it "
                         "as live.")
            .arg(p.rough(p.finding.found), p.who(), p.rough(p.finding.limit));
    return Words::tr("The work is %1 on plan from the wire %2: inside %3 ask the line's operator "
                     "before you start, and treat it as live.")
        .arg(p.rough(p.finding.found), p.who(), p.rough(p.finding.limit));
}

QString targetBelow(const Parts& p)
{
    if (p.finding.found && *p.finding.found > 0)
        return Words::tr("%1 is %2 from where the wood is cut, and it can come down as far as %3 "
                         "away.")
            .arg(p.who(), p.rough(p.finding.found), p.rough(p.finding.limit));
    return Words::tr("The piece comes down on %1.").arg(p.who());
}

QString limbOverloaded(const Parts& p)
{
    if (!p.finding.found)
        return Words::tr("%1 is dead or cracked wood that can't be counted on in any gust.")
            .arg(p.who());
    return Words::tr("%1 would be asked for %2 of its expected strength in the gust: more than it "
                     "is likely to bear.")
        .arg(p.who(), p.share(p.finding.found));
}

QString peopleBelow(const Parts& p)
{
    const auto [away, where] = std::pair(p.rough(p.finding.limit), p.who());
    if (p.finding.severity == model::advice::Severity::block)
        return Words::tr("%1 is a road within %2 of where the piece comes down: only those who may "
                         "stop the traffic can work there. Ask the local authority.")
            .arg(where, away);
    return Words::tr("People use %1: make no cut while anybody is within %2 of where the piece "
                     "comes down. Close it, and have someone watch it.")
        .arg(where, away);
}

/// What stands in the way of safe work.
QString safetySentence(const Parts& p)
{
    const Finding& f = p.finding;
    switch (f.rule) {
    case Rule::nearLine:
        return nearLine(p);
    case Rule::targetBelow:
        return targetBelow(p);
    case Rule::peopleBelow:
        return peopleBelow(p);
    case Rule::plantingBelow:
        return Words::tr("Pieces can come down on %1: lower them by hand, or lay boards over it.")
            .arg(p.who());
    case Rule::deadWood:
        return Words::tr("%1 is dead wood in a tree %2 tall: above %3 it can break at a touch.")
            .arg(p.who(), p.rough(f.found), p.rough(f.limit));
    case Rule::brokenWood:
        return Words::tr("%1 is broken where it is %2 thick: over %3 it can't be held in one hand, "
                         "and the weight that comes off makes it jump.")
            .arg(p.who(), p.diameter(f.found), p.diameter(f.limit));
    case Rule::nearChimney:
        return Words::tr("Leaf or wood comes within %1 of the mouth of %2: inside %3 sparks can "
                         "set it alight, so it should be kept clear.")
            .arg(p.rough(f.found), p.who(), p.rough(f.limit));
    case Rule::crackedOrHollow:
        return Words::tr("%1 has a crack or a hollow, so nobody can tell from a sketch what it "
                         "still carries.")
            .arg(p.who());
    case Rule::warningSign:
        return warningSigns(p);
    case Rule::leaningStem:
        return Words::tr("The stem leans %1 from upright; over %2 an arborist should judge it.")
            .arg(p.angle(f.found), p.angle(f.limit));
    case Rule::limbOverloaded:
        return limbOverloaded(p);
    default:
        return {};
    }
}

QString protection(const Parts& p)
{
    if (p.wording.tree.protection == model::Protection::listed)
        return Words::tr("This tree is protected: get the authority's written consent before any "
                         "cut.");
    return Words::tr(
        "Whether a law or an order protects this tree is not known: make no cut before "
        "the local authority has been asked.");
}

QString monthToAvoid(const Parts& p)
{
    const QString common = commonName(p.wording.species);
    QString reason = QString::fromStdString(p.wording.species.practice.avoidReason);
    reason.replace(QLatin1Char(';'), QLatin1Char(','));
    if (reason.isEmpty())
        return Words::tr("%1 is a month to avoid for cutting %2.")
            .arg(p.month(p.finding.found), common);
    return Words::tr("%1 is a month to avoid for cutting %2 (%3).")
        .arg(p.month(p.finding.found), common, reason);
}

/// The law and the calendar.
QString timingSentence(const Parts& p)
{
    switch (p.finding.rule) {
    case Rule::protectedTree:
        return protection(p);
    case Rule::monthToAvoid:
        return monthToAvoid(p);
    case Rule::dryWeather:
        return Words::tr(
                   "Fungi enter the wounds of %1 with rain: cut when it is dry and no rain is "
                   "forecast; best are six weeks without.")
            .arg(commonName(p.wording.species));
    case Rule::nestingSeason:
        return Words::tr(
                   "Birds may be nesting in %1: make no cut before you have searched the tree, "
                   "and wait if there is a nest in use.")
            .arg(p.month(p.finding.found));
    case Rule::oakWilt:
        return Words::tr("Oak wilt enters fresh wounds until the end of %1 where this garden lies: "
                         "make no cut on an oak before then. If it can't wait, seal each wound at "
                         "once.")
            .arg(p.month(p.finding.limit));
    default:
        return {};
    }
}

} // namespace

QString sentence(const Finding& finding, const Wording& wording)
{
    const Parts parts{finding, wording};
    for (auto* words :
         {&amountSentence, &shapeSentence, &sizeSentence, &safetySentence, &timingSentence}) {
        const QString text = words(parts);
        if (!text.isEmpty())
            return capitalised(text);
    }
    return {};
}

} // namespace app
