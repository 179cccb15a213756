#include "app/view/clock.hpp"

#include <QDateTime>
#include <QTimeZone>

#include <algorithm>

namespace app {

model::light::Instant instantAt(const model::Place& place, std::chrono::year_month_day date,
                                double hour)
{
    using namespace std::chrono;
    constexpr int kDay_ms = 86'400'000;
    const auto sinceMidnight_ms = static_cast<int>(hour * 3'600'000.0);
    const QTimeZone zone(QByteArray::fromStdString(place.timeZone));
    if (place.timeZone.empty() || !zone.isValid()) {
        const auto sunLead = static_cast<long long>(place.longitude_deg / 360.0 * kDay_ms);
        return sys_days(date) + milliseconds(sinceMidnight_ms - sunLead);
    }
    const QDate day(static_cast<int>(date.year()),
                    static_cast<int>(static_cast<unsigned>(date.month())),
                    static_cast<int>(static_cast<unsigned>(date.day())));
    const auto time = QTime::fromMSecsSinceStartOfDay(std::clamp(sinceMidnight_ms, 0, kDay_ms - 1));
    return model::light::Instant(milliseconds(QDateTime(day, time, zone).toMSecsSinceEpoch()));
}

} // namespace app
