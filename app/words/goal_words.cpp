#include "app/words/goal_words.hpp"

#include "app/words/growth_words.hpp"
#include "app/words/light_words.hpp"

namespace app {
namespace {

using model::GoalKind;
using model::advice::GoalResult;
using State = GoalResult::State;

/// "from 118 % to 92 %", or what there is of it.
QString change(const QString& before, const QString& after)
{
    if (before == after)
        return Words::tr("stays at %1").arg(after);
    return Words::tr("goes from %1 to %2").arg(before, after);
}

QString relief(const GoalResult& result, const Wording& wording)
{
    const Units& units = wording.units;
    const QString gust = units.speed(wording.garden.designGust_m_s);
    const QString most = units.share(*result.wanted);
    const QString subject = result.goal.subject.empty()
                                ? Words::tr("The hardest pressed limb")
                                : capitalised(limbName(wording, result.goal.subject));
    if (!result.before)
        return Words::tr("%1 has no sound wood to reckon with.").arg(subject);
    if (!result.after)
        return Words::tr("%1 goes, and its load with it.").arg(subject);
    return Words::tr(
               "%1, in a gust of %2 in full leaf and crop: the share of its expected strength "
               "%3; wanted is %4 at most.")
        .arg(subject, gust, change(units.share(*result.before), units.share(*result.after)), most);
}

/// The gust in which a limb is expected to break.
QString gust(const GoalResult& result, const Wording& wording)
{
    const Units& units = wording.units;
    const QString subject = result.goal.subject.empty()
                                ? Words::tr("The limb that would break first")
                                : capitalised(limbName(wording, result.goal.subject));
    if (!result.before)
        return Words::tr("%1 has no sound wood to reckon with.").arg(subject);
    if (!result.after)
        return Words::tr("%1 goes, and its load with it.").arg(subject);
    return Words::tr("%1, in full leaf and crop: the gust in which it is expected to break %2, "
                     "half of such limbs below it; wanted is %3 at least.")
        .arg(subject, change(units.speed(*result.before), units.speed(*result.after)),
             units.speed(*result.wanted));
}

QString withoutTree(const GoalResult& result, const QString& atBest)
{
    if (*result.atBest >= *result.wanted)
        return {};
    return QLatin1Char(' ') +
           Words::tr("Without this tree it would be %1: other things shade it too.").arg(atBest);
}

QString light(const GoalResult& result, const Wording& wording)
{
    const Units& units = wording.units;
    return Words::tr("%1: direct sun %2 a day; wanted are %3.")
               .arg(thingName(wording.garden, result.goal.subject),
                    change(units.hours(*result.before), units.hours(*result.after)),
                    units.hours(*result.wanted)) +
           withoutTree(result, units.hours(*result.atBest));
}

/// Light for growth.
QString moles(const GoalResult& result, const Wording& wording)
{
    const Units& units = wording.units;
    return Words::tr("%1: light for growth %2 a day; wanted are %3.")
               .arg(thingName(wording.garden, result.goal.subject),
                    change(molWords(*result.before, units), molWords(*result.after, units)),
                    molWords(*result.wanted, units)) +
           withoutTree(result, molWords(*result.atBest, units));
}

QString measured(const GoalResult& result, const Wording& wording)
{
    const QString subject = subjectName(wording, result.goal.subject);
    switch (result.goal.kind) {
    case GoalKind::relief:
        return relief(result, wording);
    case GoalKind::gust:
        return gust(result, wording);
    case GoalKind::light:
        return light(result, wording);
    case GoalKind::dli:
        return moles(result, wording);
    case GoalKind::keep:
        return Words::tr("%1 is to stay.").arg(capitalised(subject));
    case GoalKind::lose:
        return Words::tr("%1 is to go.").arg(capitalised(subject));
    case GoalKind::openCentre:
        return Words::tr("The middle of the crown is to be free of upright limbs: %1 stand in it, "
                         "%2 afterwards.")
            .arg(wording.units.number(*result.before, 0), wording.units.number(*result.after, 0));
    case GoalKind::leaf:
        return Words::tr("No more than %1 of the leaf is to go.")
            .arg(wording.units.share(*result.wanted));
    }
    return {};
}

QString verdict(State state)
{
    switch (state) {
    case State::met:
        return Words::tr("Reached.");
    case State::givenUp:
        return Words::tr("A wish given up: no cuts were found that reach it with the rest inside "
                         "the guideline.");
    case State::missed:
        return Words::tr(
            "Not reached inside the guideline; these cuts come as close as any that were found.");
    case State::leftAside:
        break;
    }
    return {};
}

} // namespace

QString sentence(const GoalResult& result, const Wording& wording)
{
    if (result.state == State::leftAside && result.goal.kind == GoalKind::openCentre)
        return Words::tr("Opening the middle of the crown is for fruit trees: it is left aside.");
    if (result.state == State::leftAside)
        return Words::tr("The goal about “%1” is left aside: there is no such limb or planting, or "
                         "nothing is known of the light it needs.")
            .arg(QString::fromStdString(result.goal.subject));
    QString text = measured(result, wording) + QLatin1Char(' ') + verdict(result.state);
    if (result.lost)
        text += QLatin1Char(' ') +
                Words::tr("As the shoots grow it holds %1.").arg(holdsTill(*result.lost, wording));
    return text;
}

} // namespace app
