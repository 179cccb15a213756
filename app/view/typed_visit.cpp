#include "app/view/typed_visit.hpp"

#include "app/view/visit_form.hpp"

#include <QDate>

namespace app {
namespace {

/// A day as it is written on paper or as ISO 8601 has it; blank: it is none.
std::optional<std::chrono::year_month_day> parseDay(const QString& text, const QLocale& locale)
{
    QDate day = QDate::fromString(text.trimmed(), Qt::ISODate);
    for (const auto format : {QLocale::LongFormat, QLocale::ShortFormat})
        if (!day.isValid())
            day = locale.toDate(text.trimmed(), format);
    if (!day.isValid() || day.year() < 1800 || day.year() > 2200)
        return std::nullopt;
    return std::chrono::year(day.year()) / day.month() / day.day();
}

} // namespace

QString isoDay(std::chrono::year_month_day date)
{
    return QDate(static_cast<int>(date.year()), static_cast<int>(unsigned(date.month())),
                 static_cast<int>(unsigned(date.day())))
        .toString(Qt::ISODate);
}

QString readDays(const TypedVisit& typed, const Units& units, std::chrono::year_month_day today,
                 model::Visit& visit)
{
    const auto& locale = units.locale();
    const auto date = parseDay(typed.date, locale);
    if (!date)
        return VisitForm::tr("The day can't be read: write it such as %1.").arg(isoDay(today));
    visit.date = *date;
    if (typed.nextDue.trimmed().isEmpty())
        return {};
    visit.nextDue = parseDay(typed.nextDue, locale);
    if (!visit.nextDue)
        return VisitForm::tr("The day to come again can't be read: write it such as %1.")
            .arg(isoDay(today));
    if (*visit.nextDue < visit.date)
        return VisitForm::tr("The day to come again lies before the visit.");
    return {};
}

QString readWeather(const TypedVisit& typed, const Units& units, model::Visit& visit)
{
    model::VisitWeather weather;
    if (!typed.air.trimmed().isEmpty()) {
        weather.air_C = units.parseTemperature_C(typed.air);
        if (!weather.air_C || !(*weather.air_C >= -50.0 && *weather.air_C <= 60.0))
            return VisitForm::tr("The warmth can't be read: write it such as %1.")
                .arg(units.temperature(21.0));
    }
    if (!typed.humidity.trimmed().isEmpty()) {
        weather.humidity = units.parseShare(typed.humidity);
        if (!weather.humidity || !(*weather.humidity >= 0.0 && *weather.humidity <= 1.0))
            return VisitForm::tr("The humidity can't be read: write it such as 55 %.");
    }
    if (!typed.gust.trimmed().isEmpty()) {
        weather.gust_m_s = units.parseSpeed_m_s(typed.gust);
        if (!weather.gust_m_s || !(*weather.gust_m_s >= 0.0 && *weather.gust_m_s <= 100.0))
            return VisitForm::tr("The gusts can't be read: write them such as %1.")
                .arg(units.speed(5.0));
    }
    if (weather.air_C || weather.humidity || weather.gust_m_s)
        visit.weather = weather;
    return {};
}

QString readHeadroom(std::span<const StripHeights> strips, const Units& units, model::Visit& visit)
{
    for (const auto& row : strips) {
        model::HeadroomRecord record;
        record.strip = row.strip;
        for (const auto& [text, height] :
             {std::pair(&row.before, &record.before_m), std::pair(&row.after, &record.after_m)}) {
            if (text->trimmed().isEmpty())
                continue;
            *height = units.parseLength_m(*text);
            if (!*height || !(**height >= 0.0 && **height <= 120.0))
                return VisitForm::tr("The headroom over %1 can't be read: write it such as %2.")
                    .arg(row.name, units.length(2.1));
        }
        if (record.before_m || record.after_m)
            visit.headroom.push_back(std::move(record));
    }
    return {};
}

} // namespace app
