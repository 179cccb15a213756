#include "app/calendar/due_calendar.hpp"

#include "app/language/language.hpp"
#include "app/report/diary_json.hpp"
#include "app/words/cautions.hpp"
#include "app/words/diary_words.hpp"

#include <QDir>
#include <QSaveFile>
#include <QUuid>

#include <algorithm>

namespace app {
namespace {

using model::diary::Due;
using model::diary::DueKind;
using model::diary::DueState;
using std::chrono::days;
using std::chrono::sys_days;

// The name space of this program's own UIDs (RFC 4122, version 5): drawn once by lot.
constexpr QUuid kNamespace{0x5d1a7e0b, 0x3c44, 0x4f6e, 0x9b, 0x1d, 0x62,
                           0x8f,       0x0a,   0x77,   0xc3, 0x51};

constexpr days kLongest{92};

void setDays(CalendarDay& day, const Due& due, std::chrono::year_month_day date)
{
    if (due.state == DueState::overdue) {
        day.from = day.to = date;
        day.overdue = true;
        return;
    }
    day.from = due.from;
    day.to = due.to.value_or(due.from);
    if (sys_days{day.to} - sys_days{day.from} > kLongest)
        day.to = day.from;
}

} // namespace

QString dueUid(const model::Garden& garden, const Due& due)
{
    // A hundred metres or so: the place as typed a little better is still the same garden.
    QStringList parts{QString::number(garden.place.latitude_deg, 'f', 3),
                      QString::number(garden.place.longitude_deg, 'f', 3),
                      QString::fromStdString(due.tree), QLatin1String(jsonName(due.kind))};
    if (due.kind == DueKind::headroom)
        parts << QString::fromStdString(due.subject);
    return QUuid::createUuidV5(kNamespace, parts.join(QLatin1Char('\n')))
        .toString(QUuid::WithoutBraces);
}

std::vector<CalendarDay> dueDays(const model::Garden& garden, const std::vector<Due>& all,
                                 const model::Tables& tables, const Units& units,
                                 std::chrono::year_month_day date)
{
    std::vector<CalendarDay> calendar;
    for (const auto& due : all) {
        const auto& tree = *std::ranges::find(garden.trees, due.tree, &model::Tree::id);
        const Wording wording{units, garden, tree, *findSpecies(tables, tree.species)};
        CalendarDay day;
        day.uid = dueUid(garden, due);
        day.summary = Words::tr("%1: %2", "a tree, and what it is due for")
                          .arg(capitalised(treeName(tree, wording.species)), dueWhat(due, wording));
        day.description = Words::tr("%1 (%2).", "when (overdue)")
                              .arg(capitalised(dueWhen(due, units)), dueStateWords(due.state)) +
                          QLatin1Char('\n') + dueWhy(due, wording) + QLatin1String("\n\n") +
                          cautions().join(QLatin1Char('\n'));
        setDays(day, due, date);
        calendar.push_back(std::move(day));
    }
    return calendar;
}

std::string gardenCalendar(const model::Garden& garden, const std::vector<Due>& due,
                           const model::Tables& tables, const Units& units,
                           std::chrono::year_month_day date, std::chrono::sys_seconds stamp)
{
    const QString name = garden.name.empty() ? Words::tr("Trees of the garden")
                                             : QString::fromStdString(garden.name);
    return calendarText(name, dueDays(garden, due, tables, units, date), languageOfWords(), stamp);
}

QString writeCalendarFile(const QString& path, const std::string& text)
{
    QSaveFile file(path);
    const auto size = static_cast<qint64>(text.size());
    if (file.open(QIODevice::WriteOnly) && file.write(text.data(), size) == size && file.commit())
        return {};
    return Words::tr("%1 was not written: %2.")
        .arg(QDir::toNativeSeparators(path), file.errorString());
}

} // namespace app
