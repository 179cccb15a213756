#include "app/words/diary_words.hpp"

#include "app/words/cut_words.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

using model::CutKind;
using model::Visit;
using model::diary::Due;
using model::diary::DueKind;
using model::diary::DueState;
using std::chrono::year_month_day;

QString monthAndYear(year_month_day date, const Units& units)
{
    return Words::tr("%1 %2", "month and year")
        .arg(units.month(static_cast<int>(static_cast<unsigned>(date.month()))))
        .arg(static_cast<int>(date.year()));
}

/// A limb's name, also of one that this visit took.
QString limbThen(const std::string& id, const Visit& visit, const Wording& wording)
{
    const auto kept = std::ranges::find(visit.limbsBefore, id, &model::Limb::id);
    if (model::limbIndex(wording.tree, id) != model::kNoLimb || kept == visit.limbsBefore.end() ||
        kept->name.empty())
        return limbName(wording, id);
    return Words::tr("“%1”").arg(QString::fromStdString(kept->name));
}

QString headroomWhy(const Due& due, const Wording& wording)
{
    const Units& units = wording.units;
    const QString height = units.length(due.height_m.value_or(0.0));
    const QString needed = units.length(due.needed_m.value_or(0.0));
    const QString how = due.measured
                            ? Words::tr("It was last measured at %1; %2 is needed.")
                            : Words::tr("As drawn there is %1 at its heaviest; %2 is needed.");
    const QString known = how.arg(height, needed);
    if (*due.height_m <= *due.needed_m)
        return known;
    if (!due.middle)
        return known + QLatin1Char(' ') +
               Words::tr("One in ten such trees would be too low by %1.")
                   .arg(monthAndYear(due.from, units));
    return known + QLatin1Char(' ') +
           Words::tr("Half of such trees would be too low by %1.").arg(units.date(*due.middle));
}

QString writtenWhy(const Due& due, const Wording& wording)
{
    const auto& visits = wording.tree.visits;
    const auto visit = std::ranges::find(visits, due.subject, &Visit::id);
    if (visit == visits.end())
        return Words::tr("You wrote it in the diary.");
    return Words::tr("You wrote it in the diary on %1.").arg(wording.units.date(visit->date));
}

void addMeasures(QStringList& lines, const Visit& visit, const Wording& wording)
{
    const Units& units = wording.units;
    for (const auto& record : visit.headroom) {
        const QString strip = thingName(wording.garden, record.strip);
        if (record.before_m && record.after_m)
            lines << Words::tr("Headroom over %1: %2 before, %3 after.")
                         .arg(strip, units.length(*record.before_m), units.length(*record.after_m));
        else if (record.before_m || record.after_m)
            lines << (record.before_m ? Words::tr("Headroom over %1: %2 before.")
                                      : Words::tr("Headroom over %1: %2 after."))
                         .arg(strip,
                              units.length(record.before_m.value_or(record.after_m.value_or(0.0))));
    }
    for (const auto& tip : visit.tips)
        lines << Words::tr("The tip of %1 was measured.").arg(limbThen(tip.limb, visit, wording));
}

QString weatherLine(const model::VisitWeather& weather, const Units& units)
{
    QStringList parts;
    if (weather.air_C)
        parts << units.temperature(*weather.air_C);
    if (weather.humidity)
        parts << Words::tr("humidity %1").arg(units.share(*weather.humidity));
    if (weather.gust_m_s)
        parts << Words::tr("gusts of %1").arg(units.speed(*weather.gust_m_s));
    return parts.isEmpty() ? QString() : Words::tr("Weather: %1.").arg(listed(units, parts));
}

QStringList cutsOf(const std::vector<model::Cut>& cuts, const Visit& visit, const Wording& wording)
{
    QStringList all;
    for (const auto& cut : cuts)
        all << cutMade(cut, visit, wording);
    return all;
}

} // namespace

QString dueWhat(const Due& due, const Wording& wording)
{
    switch (due.kind) {
    case DueKind::headroom:
        return Words::tr("Headroom over %1").arg(thingName(wording.garden, due.subject));
    case DueKind::window:
        return due.cuts == 1   ? Words::tr("1 planned cut")
               : due.cuts == 0 ? Words::tr("The rest of the plan")
                               : Words::tr("%1 planned cuts").arg(due.cuts);
    case DueKind::storm:
        return Words::tr("Look it over before the storms");
    case DueKind::written:
        return Words::tr("Visit as you wrote");
    }
    return {};
}

QString dueWhen(const Due& due, const Units& units)
{
    const bool lost =
        due.kind == DueKind::headroom && due.state == DueState::overdue && !due.middle;
    if (lost && !due.measured)
        return Words::tr("now, as it is drawn");
    if (lost)
        return Words::tr("since %1").arg(units.date(due.from));
    if (!due.to)
        return Words::tr("from %1").arg(units.date(due.from));
    if (*due.to == due.from)
        return units.date(due.from);
    return Words::tr("%1 to %2").arg(units.date(due.from), units.date(*due.to));
}

QString dueWhy(const Due& due, const Wording& wording)
{
    switch (due.kind) {
    case DueKind::headroom:
        return headroomWhy(due, wording);
    case DueKind::window:
        if (due.cuts == 0)
            return Words::tr("The guideline lets nothing more be cut before. Those are good months "
                             "for the species after that.");
        return Words::tr("Good months for cutting %1. Look at the plan first: dead wood and lost "
                         "headroom need not wait for them.")
            .arg(commonName(wording.species));
    case DueKind::storm:
        return Words::tr("Look from the ground for cracks, hung-up or dead limbs, a fresh lean, "
                         "lifting soil and mushrooms, every year and after each storm. What you "
                         "find is for a certified arborist.");
    case DueKind::written:
        return writtenWhy(due, wording);
    }
    return {};
}

QString dueStateWords(DueState state)
{
    switch (state) {
    case DueState::overdue:
        return Words::tr("overdue");
    case DueState::now:
        return Words::tr("now");
    case DueState::later:
        return Words::tr("later");
    }
    return {};
}

QString cutMade(const model::Cut& cut, const Visit& visit, const Wording& wording)
{
    const QString name = limbThen(cut.limb, visit, wording);
    const Units& units = wording.units;
    switch (cut.kind) {
    case CutKind::removal:
        return Words::tr("%1 taken off").arg(name);
    case CutKind::reduction:
        return Words::tr("%1 shortened to %2").arg(name, units.length(cut.at_m));
    case CutKind::thinning:
        return cut.share ? Words::tr("%1 thinned by %2").arg(name, units.share(*cut.share))
                         : Words::tr("%1 thinned").arg(name);
    case CutKind::renewal:
        return cut.share ? Words::tr("%1 renewed by %2").arg(name, units.share(*cut.share))
                         : Words::tr("%1 renewed").arg(name);
    case CutKind::lifting:
        return cut.height_m ? Words::tr("%1 lifted to %2").arg(name, units.length(*cut.height_m))
                            : Words::tr("%1 lifted").arg(name);
    }
    return {};
}

QString visitTitle(const Visit& visit, const Units& units)
{
    const QString date = units.date(visit.date);
    return visit.by.empty() ? date
                            : Words::tr("%1, %2", "a date, and who came")
                                  .arg(date, QString::fromStdString(visit.by));
}

QStringList visitLines(const Visit& visit, const Wording& wording)
{
    QStringList lines;
    const auto made = cutsOf(visit.cuts, visit, wording);
    if (made.isEmpty())
        lines << Words::tr("Nothing was cut.");
    else
        lines << Words::tr("Cut: %1.").arg(listed(wording.units, made));
    if (const auto left = cutsOf(visit.left, visit, wording); !left.isEmpty())
        lines << Words::tr("Planned and left: %1.").arg(listed(wording.units, left));
    if (visit.leafShare)
        lines << Words::tr("%1 of the leaf.").arg(wording.units.share(*visit.leafShare));
    else if (!visit.cuts.empty())
        lines << Words::tr("How much leaf went was not noted.");
    addMeasures(lines, visit, wording);
    if (visit.weather)
        lines << weatherLine(*visit.weather, wording.units);
    if (!visit.note.empty())
        lines << QString::fromStdString(visit.note);
    if (visit.nextDue)
        lines << Words::tr("To come again: %1.").arg(wording.units.date(*visit.nextDue));
    lines.removeAll(QString());
    return lines;
}

QStringList photoLines(const Visit& visit)
{
    QStringList lines;
    for (const auto& photo : visit.photos) {
        const QString file = QString::fromStdString(photo.file);
        lines << (photo.note.empty()
                      ? Words::tr("Photo: %1.").arg(file)
                      : Words::tr("Photo: %1, %2.", "its file, and the words under it")
                            .arg(file, QString::fromStdString(photo.note)));
    }
    return lines;
}

QString seasonName(const model::diary::SeasonLeaf& season, const Wording& wording)
{
    const int year = season.season.year;
    if (wording.garden.place.latitude_deg >= 0.0)
        return QString::number(year);
    return QStringLiteral("%1–%2").arg(year).arg((year + 1) % 100, 2, 10, QLatin1Char('0'));
}

QString seasonSentence(const model::diary::SeasonLeaf& season, const Units& units)
{
    QString text =
        season.taken > season.guideline
            ? Words::tr("%1 of the leaf taken; the guideline is %2.")
                  .arg(units.share(season.taken), units.share(season.guideline))
            : Words::tr("%1 of the leaf taken of the %2 that the guideline allows; %3 left.")
                  .arg(units.share(season.taken), units.share(season.guideline),
                       units.share(season.left()));
    if (season.unknown > 0)
        text += QLatin1Char(' ') + Words::tr("It was more: for %1 of the visits nobody noted how "
                                             "much.")
                                       .arg(season.unknown);
    return text;
}

QString sentence(const model::growth::MeasuredGrowth& grown, const Wording& wording)
{
    const Units& units = wording.units;
    const QString from = units.date(grown.from);
    const QString to = units.date(grown.to);
    const QString moved = units.length(std::fabs(grown.moved_m));
    const QString years = units.number(grown.years, 1);
    if (grown.at == model::growth::MeasuredAt::tip)
        return Words::tr("The tip of %1 came %2 from %3 to %4, in %5 years of growth.")
            .arg(limbName(wording, grown.subject), moved, from, to, years);
    const QString strip = thingName(wording.garden, grown.subject);
    if (grown.moved_m < 0.0)
        return Words::tr("Over %1 there was %2 more headroom on %4 than on %3.")
            .arg(strip, moved, from, to);
    return Words::tr("Over %1 %2 of headroom grew shut from %3 to %4, in %5 years of growth.")
        .arg(strip, moved, from, to, years);
}

QString sentence(const model::diary::WoundState& state, const Wording& wording)
{
    const Units& units = wording.units;
    const QString what = Words::tr("%1 across, on %2, made on %3")
                             .arg(units.diameter(state.wound.diameter_m),
                                  limbName(wording, state.wound.limb), units.date(state.made));
    if (state.wound.closed)
        return Words::tr("%1: seen closed on %2.").arg(what, units.date(*state.wound.closed));
    if (state.lingers)
        return Words::tr("%1: it should have closed by now. If it has not, or if it is soft, "
                         "hollow or wet, ask a certified arborist.")
            .arg(what);
    if (state.open_m <= 0.0)
        return Words::tr("%1: should be closed by now; look, and note it.").arg(what);
    if (!state.closes.middle)
        return Words::tr("%1: about %2 open; not closed within twenty years.")
            .arg(what, units.diameter(state.open_m));
    return Words::tr("%1: about %2 should be open; closed by about %3.")
        .arg(what, units.diameter(state.open_m), monthAndYear(*state.closes.middle, units));
}

} // namespace app
