#include "app/words/growth_words.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

using model::advice::Hold;
using model::advice::Outcome;
using model::growth::Regrowth;

/// Less headroom than this is none to spare.
constexpr double kNoSpare_m = 0.03;

/// A day where days are known, else the month.
QString day(std::chrono::year_month_day date, bool toTheMonth, const Units& units)
{
    if (!toTheMonth)
        return units.date(date);
    return Words::tr("%1 %2", "month and year")
        .arg(units.month(static_cast<int>(static_cast<unsigned>(date.month()))))
        .arg(static_cast<int>(date.year()));
}

} // namespace

QString holdsTill(const model::growth::GrownOn& regrowth, const Wording& wording)
{
    using std::chrono::sys_days;
    const Units& units = wording.units;
    if (!regrowth.middle)
        return Words::tr("for twenty years or more");
    const bool toTheMonth =
        !regrowth.early || !regrowth.late ||
        sys_days{*regrowth.late} - sys_days{*regrowth.early} > std::chrono::days{150};
    const auto said = [&](std::chrono::year_month_day date) {
        return day(date, toTheMonth, units);
    };
    if (!regrowth.early || regrowth.early == regrowth.middle)
        return Words::tr("till about %1").arg(said(*regrowth.middle));
    if (!regrowth.late)
        return Words::tr("till about %1 (%2 at the earliest)")
            .arg(said(*regrowth.middle), said(*regrowth.early));
    return Words::tr("till about %1 (between %2 and %3)")
        .arg(said(*regrowth.middle), said(*regrowth.early), said(*regrowth.late));
}

namespace {

/// "Kept like that it wants three cuts a year."
QString howOften(double cutsAYear, const Wording& wording)
{
    const auto rounded = std::lround(cutsAYear);
    if (rounded >= 2)
        return Words::tr("Kept at that it wants about %1 cuts a year.").arg(rounded);
    if (cutsAYear > 0.75)
        return Words::tr("Kept at that it wants about one cut a year.");
    return Words::tr("Kept at that it wants a cut about every %1 years.")
        .arg(wording.units.number(1.0 / cutsAYear, cutsAYear > 0.3 ? 1 : 0));
}

} // namespace

QString sentence(const Regrowth& regrowth, const Wording& wording)
{
    const QString strip = thingName(wording.garden, regrowth.strip);
    const QString limb = limbName(wording, regrowth.limb);
    if (regrowth.spare_m < -kNoSpare_m)
        return Words::tr("%1: still short of headroom.").arg(strip);
    if (regrowth.spare_m < kNoSpare_m)
        return Words::tr("%1 has nothing to spare: the next that %2 grows is in the way again.")
            .arg(strip, limb);
    QString text =
        Words::tr("%1 has %2 to spare and holds %3; %4 comes down first.")
            .arg(strip, wording.units.length(regrowth.spare_m),
                 holdsTill({regrowth.early, regrowth.middle, regrowth.late}, wording), limb);
    if (regrowth.cutsAYear && regrowth.middle)
        text += QLatin1Char(' ') + howOften(*regrowth.cutsAYear, wording);
    return text;
}

QString shootWords(const model::growth::ShootRate& shoots, const Wording& wording)
{
    const Units& units = wording.units;
    if (shoots.measurements == 0)
        return Words::tr("Reckoned with shoots of about %1 a year, as the species grows: no two "
                         "visits in the diary measured the same strip. Tape it at every visit, "
                         "and the next answer is about this tree.")
            .arg(units.roughLength(shoots.mean_m));
    return Words::tr("Reckoned with shoots of about %1 a year; the species alone would say %2, "
                     "the diary measured this tree over %3.")
        .arg(units.roughLength(shoots.mean_m), units.roughLength(shoots.speciesMean_m),
             shoots.measurements == 1
                 ? Words::tr("one stretch of growth")
                 : Words::tr("%1 stretches of growth").arg(shoots.measurements));
}

QStringList holdLines(const std::vector<Hold>& holds, const Wording& wording)
{
    const Units& units = wording.units;
    QStringList lines;
    for (const Hold& hold : holds) {
        const QString spare =
            units.length(hold.first ? std::max(hold.spare_m, hold.first->spare_m) : hold.spare_m);
        if (hold.outcome == Outcome::notWithinGuideline) {
            lines << Words::tr("%1 to spare: not inside the guideline.").arg(spare);
            continue;
        }
        if (!hold.first)
            continue;
        if (hold.first->spare_m < kNoSpare_m) {
            lines
                << Words::tr("nothing to spare: %1 of the leaf.").arg(units.share(hold.leafShare));
            continue;
        }
        lines << Words::tr("%1 to spare: %2 of the leaf; %3 holds %4.")
                     .arg(spare, units.share(hold.leafShare),
                          thingName(wording.garden, hold.first->strip),
                          holdsTill({hold.first->early, hold.first->middle, hold.first->late},
                                    wording));
    }
    return lines;
}

} // namespace app
