#include "app/view/conditions_view_model.hpp"

#include "app/words/wind_words.hpp"

#include <QTime>

namespace app {
namespace {

std::chrono::sys_days firstOfYear(std::chrono::year_month_day date)
{
    return date.year() / std::chrono::January / 1;
}

} // namespace

ConditionsViewModel::ConditionsViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace)
{
    for (const auto signal :
         {&Workspace::askChanged, &Workspace::shadowChanged, &Workspace::treeChanged})
        connect(&workspace_, signal, this, &ConditionsViewModel::changed);
}

QString ConditionsViewModel::gustText() const
{
    return workspace_.units().speed(gust());
}

QString ConditionsViewModel::gustWord() const
{
    const int force = beaufortOfGust(gust());
    return tr("%1 (force %2)").arg(beaufortWord(force)).arg(force);
}

int ConditionsViewModel::dayOfYear() const
{
    const auto date = workspace_.date();
    return static_cast<int>((std::chrono::sys_days(date) - firstOfYear(date)).count()) + 1;
}

void ConditionsViewModel::setDayOfYear(int day)
{
    workspace_.setDate(
        std::chrono::year_month_day(firstOfYear(workspace_.date()) + std::chrono::days(day - 1)));
}

int ConditionsViewModel::daysInYear() const
{
    return workspace_.date().year().is_leap() ? 366 : 365;
}

QString ConditionsViewModel::dayText() const
{
    return workspace_.units().date(workspace_.date());
}

QString ConditionsViewModel::hourText() const
{
    constexpr int kMinutesPerDay = 24 * 60;
    const int minutes = static_cast<int>(hour() * 60.0 + 0.5) % kMinutesPerDay;
    const auto& locale = workspace_.units().locale();
    auto format = locale.timeFormat(QLocale::ShortFormat);
    format.remove(QStringLiteral(":ss")); // some locales' short form has seconds
    return locale.toString(QTime(minutes / 60, minutes % 60), format);
}

QString ConditionsViewModel::sunText() const
{
    const auto* shadow = workspace_.shadow();
    if (!shadow)
        return {};
    const auto& units = workspace_.units();
    if (shadow->sun.elevation_deg <= 0.0)
        return tr("The sun is down.");
    return tr("Sun in the %1, %2 high")
        .arg(Units::bearing(shadow->sun.azimuth_deg), units.angle(shadow->sun.elevation_deg));
}

} // namespace app
