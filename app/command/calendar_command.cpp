#include "app/calendar/due_calendar.hpp"
#include "app/command/commands.hpp"
#include "app/words/wording.hpp"
#include "model/diary/garden_diary.hpp"

#include <algorithm>

namespace app {

int calendarCommand(const Job& job)
{
    const Units units = unitsOf(job.arguments);
    const auto date = dateOf(job.arguments);
    const model::Garden garden = gardenOf(job);
    const auto due = model::diary::dueList(
        model::diary::gardenDiary(garden, job.tables, date, treeOf(job.arguments, garden)));
    const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    const std::string text = gardenCalendar(garden, due, job.tables, units, date, now);
    const bool overdue = std::ranges::any_of(
        due, [](const auto& one) { return one.state == model::diary::DueState::overdue; });
    if (job.arguments.output == "-") {
        job.streams.out << text;
        return statusOf(job, overdue);
    }
    const QString path = QString::fromStdString(job.arguments.output);
    const QString problem = writeCalendarFile(path, text);
    if (!problem.isEmpty())
        throw Refusal(problem.toStdString());
    job.streams.out << Words::tr("%1 reminders were written to %2. Importing a newer one later "
                                 "moves them, and adds none twice.")
                           .arg(due.size())
                           .arg(path)
                           .toStdString()
                    << '\n';
    return statusOf(job, overdue);
}

} // namespace app
