#pragma once

#include <QLocale>
#include <QString>

#include <chrono>
#include <optional>

namespace app {

/// The measures a person reads and types.
enum class Measures {
    metric,        ///< m, cm, kg, km/h (and m/s), kN m
    unitedKingdom, ///< metric, with wind in mph as British forecasts give it
    unitedStates,  ///< ft and in, lb, mph, lbf ft
};

/// SI <-> what people read. Everything behind this class is SI; nothing before it is.
///
/// Numbers follow the locale's decimal mark, never group digits (so that what is shown can be
/// typed back), and carry no more digits than a tape in a garden gives. A no-break space stands
/// before each unit.
class Units {
public:
    /// The measures usual where `locale` is spoken.
    explicit Units(const QLocale& locale);
    Units(const QLocale& locale, Measures measures);

    [[nodiscard]] Measures measures() const { return measures_; }
    [[nodiscard]] const QLocale& locale() const { return locale_; }

    [[nodiscard]] QString length(double length_m) const; ///< "2.38 m", "7 ft 10 in"
    /// For what nobody measures closer than a hand's breadth: "5.7 m", "18 ft 8 in".
    [[nodiscard]] QString roughLength(double length_m) const;
    [[nodiscard]] QString diameter(double diameter_m) const; ///< "12 cm", "4.7 in"
    [[nodiscard]] QString area(double area_m2) const;        ///< "8.2 m²", "88 ft²"
    [[nodiscard]] QString volume(double volume_m3) const;    ///< of heaps: "1.2 m³", "1.6 yd³"
    [[nodiscard]] QString mass(double mass_kg) const;        ///< "38 kg", "84 lb"
    [[nodiscard]] QString speed(double speed_m_s) const;     ///< "90 km/h (25 m/s)", "56 mph"
    /// Of a difference between two: "1.4 km/h", "0.9 mph".
    [[nodiscard]] QString speedStep(double speed_m_s) const;
    [[nodiscard]] QString moment(double moment_Nm) const;          ///< "3.2 kN m", "2360 lbf ft"
    [[nodiscard]] QString force(double force_N) const;             ///< "1.2 kN", "270 lbf"
    [[nodiscard]] QString stress(double stress_Pa) const;          ///< "13.7 MPa", "1990 psi"
    [[nodiscard]] QString sectionModulus(double modulus_m3) const; ///< "269 cm³", "16.4 in³"
    [[nodiscard]] QString density(double density_kg_m3) const; ///< "1.23 kg/m³", "0.0765 lb/ft³"
    [[nodiscard]] QString temperature(double temperature_C) const; ///< "5 °C", "41 °F"
    [[nodiscard]] QString share(double share) const;               ///< 0.23 as "23 %"
    [[nodiscard]] QString hours(double hours) const;               ///< "5.2 h"
    [[nodiscard]] QString angle(double angle_deg) const;           ///< "15°"
    [[nodiscard]] QString number(double value, int decimals) const;

    /// Long form without the weekday: "14 July 2025", "July 14, 2025".
    [[nodiscard]] QString date(std::chrono::year_month_day date) const;
    /// A month's name, 1..12, as it stands alone: "July".
    [[nodiscard]] QString month(int month) const;
    /// The nearest of eight directions in words: "south-west".
    [[nodiscard]] static QString bearing(double bearing_deg);

    /// What a person typed, in SI: "2.4 m", "240 cm", "8 ft 2 in", "8' 2 1/2\"". A number alone
    /// is in the unit that length() would show. Blank: it can't be read as a length.
    [[nodiscard]] std::optional<double> parseLength_m(const QString& text) const;
    /// As parseLength_m; a number alone is in cm or inches.
    [[nodiscard]] std::optional<double> parseDiameter_m(const QString& text) const;
    /// "38 kg", "1.2 t", "84 lb", "5 lb 3 oz"; a number alone is in kg or lb.
    [[nodiscard]] std::optional<double> parseMass_kg(const QString& text) const;
    /// "25 m/s", "90 km/h", "56 mph", "50 kn"; a number alone is in km/h or mph.
    [[nodiscard]] std::optional<double> parseSpeed_m_s(const QString& text) const;
    /// "5 °C", "5 C", "41 F"; a number alone is in the degrees that temperature() would show.
    [[nodiscard]] std::optional<double> parseTemperature_C(const QString& text) const;
    /// "23 %" or "23": 0.23.
    [[nodiscard]] std::optional<double> parseShare(const QString& text) const;

private:
    [[nodiscard]] bool unitedStates() const { return measures_ == Measures::unitedStates; }
    [[nodiscard]] QString feetAndInches(double length_m) const;
    [[nodiscard]] QString with(double value, int decimals, const char* unit) const;
    [[nodiscard]] QString significant(double value, const char* unit) const;

    QLocale locale_;
    Measures measures_;
};

} // namespace app
