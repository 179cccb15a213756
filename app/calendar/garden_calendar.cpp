#include "app/calendar/garden_calendar.hpp"

#include <libical/ical.h>

#include <memory>

namespace app {
namespace {

using std::chrono::sys_days;
using std::chrono::year_month_day;

struct Free {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
using Component = std::unique_ptr<icalcomponent, Free>;

icaltimetype dateValue(year_month_day date)
{
    icaltimetype value = icaltime_null_date();
    value.year = static_cast<int>(date.year());
    value.month = static_cast<int>(static_cast<unsigned>(date.month()));
    value.day = static_cast<int>(static_cast<unsigned>(date.day()));
    return value;
}

icaltimetype timeValue(std::chrono::sys_seconds time)
{
    return icaltime_from_timet_with_zone(time.time_since_epoch().count(), 0,
                                         icaltimezone_get_utc_timezone());
}

int sequenceAt(std::chrono::sys_seconds stamp)
{
    using namespace std::chrono;
    return static_cast<int>(duration_cast<minutes>(stamp - sys_days{2020y / January / 1}).count());
}

void add(icalcomponent* component, icalproperty* property)
{
    icalcomponent_add_property(component, property);
}

void addText(icalcomponent* component, icalproperty* property, const QString& language)
{
    if (!language.isEmpty())
        icalproperty_add_parameter(property,
                                   icalparameter_new_language(language.toUtf8().constData()));
    add(component, property);
}

icalcomponent* alarm(const char* before, const QString& summary)
{
    icalcomponent* alarm = icalcomponent_new_valarm();
    add(alarm, icalproperty_new_action(ICAL_ACTION_DISPLAY));
    add(alarm, icalproperty_new_trigger(icaltriggertype_from_string(before)));
    add(alarm, icalproperty_new_description(summary.toUtf8().constData()));
    return alarm;
}

icalcomponent* event(const CalendarDay& day, const QString& language,
                     std::chrono::sys_seconds stamp)
{
    icalcomponent* event = icalcomponent_new_vevent();
    add(event, icalproperty_new_uid(day.uid.toUtf8().constData()));
    add(event, icalproperty_new_dtstamp(timeValue(stamp)));
    add(event, icalproperty_new_lastmodified(timeValue(stamp)));
    add(event, icalproperty_new_sequence(sequenceAt(stamp)));
    add(event, icalproperty_new_dtstart(dateValue(day.from)));
    // RFC 5545 3.6.1: the end of an event is the first day that it does not take.
    add(event,
        icalproperty_new_dtend(dateValue(year_month_day{sys_days{day.to} + std::chrono::days{1}})));
    addText(event, icalproperty_new_summary(day.summary.toUtf8().constData()), language);
    addText(event, icalproperty_new_description(day.description.toUtf8().constData()), language);
    add(event, icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));
    if (day.overdue)
        add(event, icalproperty_new_priority(1));
    // From the midnight at which the first day starts: nine in the morning, a week and a day
    // before.
    icalcomponent_add_component(event, alarm("-P6DT15H", day.summary));
    icalcomponent_add_component(event, alarm("-PT15H", day.summary));
    return event;
}

} // namespace

std::string calendarText(const QString& name, const std::vector<CalendarDay>& days,
                         const QString& language, std::chrono::sys_seconds stamp)
{
    const Component calendar(icalcomponent_new_vcalendar());
    add(calendar.get(), icalproperty_new_version("2.0"));
    add(calendar.get(), icalproperty_new_prodid("-//Underbough//Underbough//EN"));
    add(calendar.get(), icalproperty_new_calscale("GREGORIAN"));
    addText(calendar.get(), icalproperty_new_name(name.toUtf8().constData()), language);
    for (const auto& day : days)
        icalcomponent_add_component(calendar.get(), event(day, language, stamp));
    char* text = icalcomponent_as_ical_string_r(calendar.get());
    std::string made(text);
    icalmemory_free_buffer(text);
    return made;
}

} // namespace app
