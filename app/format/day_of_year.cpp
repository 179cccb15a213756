#include "app/format/day_of_year.hpp"

#include <QDate>

namespace app {
namespace {

constexpr int kLeapYear = 2000; // so that 29 February is a day

/// The locale's long date without its year.
QString formOf(const QLocale& locale)
{
    const QString whole = locale.dateFormat(QLocale::LongFormat);
    if (whole.indexOf(QLatin1Char('M')) < whole.indexOf(QLatin1Char('d')))
        return QStringLiteral("MMMM d");
    return whole.contains(QLatin1String("d. ")) ? QStringLiteral("d. MMMM")
                                                : QStringLiteral("d MMMM");
}

} // namespace

QString dayText(std::chrono::month_day day, const QLocale& locale)
{
    const QDate date(kLeapYear, static_cast<int>(unsigned(day.month())),
                     static_cast<int>(unsigned(day.day())));
    return locale.toString(date, formOf(locale));
}

std::optional<std::chrono::month_day> parseDayOfYear(const QString& text, const QLocale& locale)
{
    const QString year = QStringLiteral(" %1").arg(kLeapYear);
    const QString typed = text.simplified() + year;
    QDate date = QDate::fromString(typed, QStringLiteral("MM-dd yyyy"));
    for (const auto* form :
         {"d MMMM yyyy", "MMMM d yyyy", "d MMM yyyy", "MMM d yyyy", "d. MMMM yyyy", "d. MMM yyyy"})
        if (!date.isValid())
            date = locale.toDate(typed, QLatin1String(form));
    if (!date.isValid())
        return std::nullopt;
    return std::chrono::month(static_cast<unsigned>(date.month())) /
           std::chrono::day(static_cast<unsigned>(date.day()));
}

} // namespace app
