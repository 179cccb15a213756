#pragma once

#include <QString>

#include <chrono>
#include <string>
#include <vector>

namespace app {

/// Something to be reminded of on whole days.
struct CalendarDay {
    QString uid;     ///< the same for the same thing in every calendar of the garden
    QString summary; ///< one line
    QString description;
    std::chrono::year_month_day from;
    std::chrono::year_month_day to; ///< the last day, included
    bool overdue{};
};

/// A calendar as iCalendar text (RFC 5545), lines ended by CRLF and folded at 75 bytes. Importing a
/// newer one updates the events of an older one, by UID and SEQUENCE. Events take no time (they are
/// transparent) and ring a week and a day before, at nine in the morning.
/// \param language  of its texts, as BCP 47 names it: "en", "de-AT"
/// \param stamp     when it was made; SEQUENCE counts its minutes since 2020
[[nodiscard]] std::string calendarText(const QString& name, const std::vector<CalendarDay>& days,
                                       const QString& language, std::chrono::sys_seconds stamp);

} // namespace app
