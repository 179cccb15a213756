#pragma once

#include "app/calendar/garden_calendar.hpp"
#include "app/format/units.hpp"
#include "model/diary/due.hpp"
#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

namespace app {

/// The UID of what a tree is due for: made of the garden's place, the tree's id, the kind and, for
/// headroom, the strip. Neither the day nor any text goes into it, so a later calendar moves the
/// reminder instead of adding one.
[[nodiscard]] QString dueUid(const model::Garden& garden, const model::diary::Due& due);

/// What is due as days of a calendar. What is overdue stands on `date`; a stretch over three months
/// stands on its first day, for a bar over a whole summer reminds nobody.
[[nodiscard]] std::vector<CalendarDay> dueDays(const model::Garden& garden,
                                               const std::vector<model::diary::Due>& all,
                                               const model::Tables& tables, const Units& units,
                                               std::chrono::year_month_day date);

/// The whole calendar of a garden as iCalendar text, in the language of the words.
[[nodiscard]] std::string gardenCalendar(const model::Garden& garden,
                                         const std::vector<model::diary::Due>& due,
                                         const model::Tables& tables, const Units& units,
                                         std::chrono::year_month_day date,
                                         std::chrono::sys_seconds stamp);

/// Writes the text whole or not at all. Gives back why it failed, as a sentence; empty: written.
[[nodiscard]] QString writeCalendarFile(const QString& path, const std::string& text);

} // namespace app
