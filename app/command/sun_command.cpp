#include "app/command/commands.hpp"
#include "app/report/json_text.hpp"
#include "model/light/sun.hpp"

#include <QDateTime>

#include <cmath>

namespace app {
namespace {

/// Finer than the reckoning, which is good to 0.01 degree.
double rounded(double angle_deg)
{
    return std::round(angle_deg * 1e5) / 1e5 + 0.0;
}

void checkRange(const char* option, double value, double most)
{
    if (!(std::abs(value) <= most))
        throw Refusal(std::string(option) + ": found " + model::plain(value) +
                      ", expected degrees from " + model::plain(-most) + " to " +
                      model::plain(most));
}

/// A time without a zone is taken as UTC, and the answer says so by its "Z".
QDateTime instantOf(const Arguments& arguments)
{
    if (arguments.at.empty())
        return QDateTime::currentDateTimeUtc();
    QDateTime at = QDateTime::fromString(QString::fromStdString(arguments.at), Qt::ISODateWithMs);
    if (at.timeSpec() == Qt::LocalTime)
        at.setTimeSpec(Qt::UTC);
    at = at.toUTC();
    if (!at.isValid() || at.date().year() < 1900 || at.date().year() > 2200)
        throw Refusal("--at: found " + model::inQuotes(arguments.at) +
                      ", expected a time such as 2025-06-21T12:30:00Z or "
                      "2025-06-21T14:30:00+02:00");
    return at;
}

} // namespace

int sunCommand(const Job& job)
{
    const Arguments& arguments = job.arguments;
    checkRange("--lat", arguments.latitude_deg, 90.0);
    checkRange("--lon", arguments.longitude_deg, 180.0);
    const QDateTime at = instantOf(arguments);
    const model::light::Instant instant{std::chrono::milliseconds(at.toMSecsSinceEpoch())};
    const auto sun =
        model::light::sunPosition(instant, arguments.latitude_deg, arguments.longitude_deg);
    const Json answer{
        {"format", "underbough-sun"},
        {"version", 1},
        {"at", at.toString(Qt::ISODateWithMs).toStdString()},
        {"latitude_deg", arguments.latitude_deg},
        {"longitude_deg", arguments.longitude_deg},
        {"elevation_deg", rounded(sun.elevation_deg)},
        {"apparent_elevation_deg",
         rounded(sun.elevation_deg + model::light::refraction_deg(sun.elevation_deg))},
        {"azimuth_deg", rounded(sun.azimuth_deg)},
    };
    job.streams.out << jsonText(answer);
    return kFine;
}

} // namespace app
