#include "app/place/cities.hpp"

#include "model/geometry/angle.hpp"

#include <QFile>
#include <QLocale>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>

namespace app {
namespace {

/// "+4723" or "-0223015": sign, degrees, minutes, seconds.
double degreesOf(const QString& text, int degreeDigits)
{
    const double minutes = text.mid(1 + degreeDigits, 2).toDouble();
    const double seconds = text.mid(3 + degreeDigits, 2).toDouble();
    const double size = text.mid(1, degreeDigits).toDouble() + minutes / 60.0 + seconds / 3600.0;
    return text.startsWith(QLatin1Char('-')) ? -size : size;
}

QString cityName(const QString& zone)
{
    QString name = zone.section(QLatin1Char('/'), -1);
    return name.replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString countryName(const QString& codes)
{
    const auto territory = QLocale::codeToTerritory(codes.section(QLatin1Char(','), 0, 0));
    return territory == QLocale::AnyTerritory ? QString() : QLocale::territoryToString(territory);
}

QByteArray tableText(const char* name)
{
    QFile file(QStringLiteral("/usr/share/zoneinfo/") + QLatin1String(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

std::vector<City> readCities(const QByteArray& table)
{
    static const QRegularExpression line(
        QStringLiteral("^([A-Z,]+)\t([+-]\\d{4}(?:\\d{2})?)([+-]\\d{5}(?:\\d{2})?)\t([^\t]+)"));
    std::vector<City> cities;
    for (const auto& row : table.split('\n')) {
        const auto match = line.match(QString::fromUtf8(row));
        if (!match.hasMatch())
            continue;
        const QString zone = match.captured(4).trimmed();
        cities.push_back({cityName(zone), countryName(match.captured(1)), zone,
                          degreesOf(match.captured(2), 2), degreesOf(match.captured(3), 3)});
    }
    return cities;
}

std::vector<City> systemCities()
{
    // The older table names every country's city; the newer has those that merged since 1970.
    auto cities = readCities(tableText("zone1970.tab"));
    for (const auto& city : readCities(tableText("zone.tab")))
        if (std::ranges::find(cities, city.zone, &City::zone) == cities.end())
            cities.push_back(city);
    std::ranges::sort(cities, {}, &City::name);
    return cities;
}

const City* nearestCity(const std::vector<City>& cities, double latitude_deg, double longitude_deg)
{
    const auto away = [&](const City& city) {
        return distance_km(city, latitude_deg, longitude_deg);
    };
    const auto found = std::ranges::min_element(cities, {}, away);
    return found == cities.end() ? nullptr : &*found;
}

double distance_km(const City& city, double latitude_deg, double longitude_deg)
{
    constexpr double kEarth_km = 6371.0;
    const double a = model::radians(city.latitude_deg);
    const double b = model::radians(latitude_deg);
    const double north = std::sin((b - a) / 2.0);
    const double east = std::sin(model::radians(longitude_deg - city.longitude_deg) / 2.0);
    const double share = north * north + std::cos(a) * std::cos(b) * east * east;
    return 2.0 * kEarth_km * std::asin(std::min(1.0, std::sqrt(share)));
}

} // namespace app
