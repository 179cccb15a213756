#pragma once

#include <QByteArray>
#include <QString>

#include <vector>

namespace app {

/// The principal city of a time zone, as the tz database names and places it.
struct City {
    QString name;    ///< "Zurich"
    QString country; ///< in English, "Switzerland"; the first of those that keep this clock
    QString zone;    ///< "Europe/Zurich"
    double latitude_deg{};
    double longitude_deg{};
    friend bool operator==(const City&, const City&) = default;
};

/// The cities of a zone1970.tab or zone.tab of the tz database (public domain): lines of country
/// codes, place in ISO 6709 (degrees and minutes, seconds where they matter), zone. Lines that
/// don't read as such are passed over.
[[nodiscard]] std::vector<City> readCities(const QByteArray& table);

/// The cities of the system's own tables, by name; none where it has no such table.
[[nodiscard]] std::vector<City> systemCities();

/// The city nearest to a place; null if there is none at all.
[[nodiscard]] const City* nearestCity(const std::vector<City>& cities, double latitude_deg,
                                      double longitude_deg);

/// Great-circle distance on a sphere of 6371 km (haversine), within 0.6 % of the ellipsoid's.
[[nodiscard]] double distance_km(const City& city, double latitude_deg, double longitude_deg);

} // namespace app
