#include "app/format/units.hpp"

#include "app/format/parse_quantity.hpp"

#include <QCoreApplication>
#include <QDate>
#include <QRegularExpression>

#include <array>
#include <cmath>

namespace app {
namespace {

// Exact by definition: the international yard and pound agreement of 1959 (inch 25.4 mm, pound
// 0.45359237 kg), the statute mile of 5280 ft, the nautical mile of 1852 m.
constexpr double kInch_m = 0.0254;
constexpr double kFoot_m = 12 * kInch_m;
constexpr double kPound_kg = 0.45359237;
constexpr double kMile_m = 5280 * kFoot_m;
constexpr double kHour_s = 3600.0;
constexpr double kMph_m_s = kMile_m / kHour_s;
constexpr double kKmh_m_s = 1000.0 / kHour_s;
constexpr double kKnot_m_s = 1852.0 / kHour_s;
constexpr double kPoundForce_N = kPound_kg * 9.80665;

constexpr std::array kLengths{
    UnitName{"m", 1.0},        UnitName{"cm", 0.01},      UnitName{"mm", 0.001},
    UnitName{"km", 1000.0},    UnitName{"ft", kFoot_m},   UnitName{"feet", kFoot_m},
    UnitName{"foot", kFoot_m}, UnitName{"'", kFoot_m},    UnitName{"′", kFoot_m},
    UnitName{"in", kInch_m},   UnitName{"inch", kInch_m}, UnitName{"inches", kInch_m},
    UnitName{"\"", kInch_m},   UnitName{"″", kInch_m},    UnitName{"yd", 3 * kFoot_m},
};
constexpr std::array kMasses{
    UnitName{"kg", 1.0},       UnitName{"g", 0.001},       UnitName{"t", 1000.0},
    UnitName{"lb", kPound_kg}, UnitName{"lbs", kPound_kg}, UnitName{"oz", kPound_kg / 16},
};
constexpr std::array kSpeeds{
    UnitName{"m/s", 1.0},      UnitName{"km/h", kKmh_m_s}, UnitName{"kmh", kKmh_m_s},
    UnitName{"kph", kKmh_m_s}, UnitName{"mph", kMph_m_s},  UnitName{"kn", kKnot_m_s},
    UnitName{"kt", kKnot_m_s}, UnitName{"kts", kKnot_m_s}, UnitName{"knots", kKnot_m_s},
};
constexpr std::array kShares{UnitName{"%", 0.01}};

Measures usualMeasures(const QLocale& locale)
{
    switch (locale.measurementSystem()) {
    case QLocale::ImperialUSSystem:
        return Measures::unitedStates;
    case QLocale::ImperialUKSystem:
        return Measures::unitedKingdom;
    case QLocale::MetricSystem:
        break;
    }
    return Measures::metric;
}

/// Decimals that leave three figures, none for numbers of 100 and more.
int decimalsForThreeFigures(double value)
{
    const double size = std::abs(value);
    return size >= 99.95 ? 0 : size >= 9.995 ? 1 : 2;
}

} // namespace

Units::Units(const QLocale& locale) : Units(locale, usualMeasures(locale)) {}

Units::Units(const QLocale& locale, Measures measures) : locale_(locale), measures_(measures)
{
    locale_.setNumberOptions(QLocale::OmitGroupSeparator | QLocale::RejectGroupSeparator);
}

QString Units::number(double value, int decimals) const
{
    const double step = std::pow(10.0, -decimals);
    const double shown = std::abs(value) < step / 2 ? 0.0 : value; // never "-0"
    QString text = locale_.toString(shown, 'f', decimals);
    if (decimals == 0)
        return text;
    while (text.endsWith(locale_.zeroDigit()))
        text.chop(1);
    if (text.endsWith(locale_.decimalPoint()))
        text.chop(locale_.decimalPoint().size());
    return text;
}

QString Units::with(double value, int decimals, const char* unit) const
{
    return number(value, decimals) + QChar::Nbsp + QString::fromUtf8(unit);
}

QString Units::significant(double value, const char* unit) const
{
    const double size = std::abs(value);
    if (size < 1000.0)
        return with(value, decimalsForThreeFigures(value), unit);
    const double step = std::pow(10.0, std::floor(std::log10(size)) - 2);
    return with(std::round(value / step) * step, 0, unit);
}

QString Units::feetAndInches(double length_m) const
{
    const long inches = std::lround(std::abs(length_m) / kInch_m);
    const QString sign = length_m < 0 && inches > 0 ? QString(locale_.negativeSign()) : QString();
    const double feet = static_cast<double>(inches / 12);
    const double rest = static_cast<double>(inches % 12);
    if (inches < 12)
        return sign + with(rest, 0, "in");
    if (inches % 12 == 0)
        return sign + with(feet, 0, "ft");
    return sign + with(feet, 0, "ft") + QChar::Nbsp + with(rest, 0, "in");
}

QString Units::length(double length_m) const
{
    if (unitedStates())
        return feetAndInches(length_m);
    return with(length_m, std::abs(length_m) < 9.995 ? 2 : 1, "m");
}

QString Units::roughLength(double length_m) const
{
    return unitedStates() ? feetAndInches(length_m) : with(length_m, 1, "m");
}

QString Units::diameter(double diameter_m) const
{
    if (unitedStates())
        return with(diameter_m / kInch_m, 1, "in");
    return with(100 * diameter_m, std::abs(diameter_m) < 0.0995 ? 1 : 0, "cm");
}

QString Units::area(double area_m2) const
{
    if (unitedStates())
        return significant(area_m2 / (kFoot_m * kFoot_m), "ft²");
    return significant(area_m2, "m²");
}

QString Units::volume(double volume_m3) const
{
    constexpr double kYard_m = 3.0 * kFoot_m;
    const double value = unitedStates() ? volume_m3 / (kYard_m * kYard_m * kYard_m) : volume_m3;
    const int decimals = std::abs(value) < 0.095 ? 2 : std::abs(value) < 9.95 ? 1 : 0;
    return with(value, decimals, unitedStates() ? "yd³" : "m³");
}

QString Units::mass(double mass_kg) const
{
    const double value = unitedStates() ? mass_kg / kPound_kg : mass_kg;
    const char* unit = unitedStates() ? "lb" : "kg";
    if (std::abs(value) < 1000.0)
        return with(value, std::abs(value) < 9.95 ? 1 : 0, unit);
    return significant(value, unit);
}

QString Units::speed(double speed_m_s) const
{
    if (measures_ != Measures::metric)
        return with(speed_m_s / kMph_m_s, 0, "mph");
    return with(speed_m_s / kKmh_m_s, 0, "km/h") + QLatin1String(" (") +
           with(speed_m_s, std::abs(speed_m_s) < 9.95 ? 1 : 0, "m/s") + QLatin1Char(')');
}

QString Units::speedStep(double speed_m_s) const
{
    if (measures_ != Measures::metric)
        return with(speed_m_s / kMph_m_s, 1, "mph");
    return with(speed_m_s / kKmh_m_s, 1, "km/h");
}

QString Units::moment(double moment_Nm) const
{
    if (unitedStates())
        return significant(moment_Nm / (kPoundForce_N * kFoot_m), "lbf\u00a0ft");
    if (std::abs(moment_Nm) < 999.5)
        return with(moment_Nm, std::abs(moment_Nm) < 9.95 ? 1 : 0, "N\u00a0m");
    return significant(moment_Nm / 1000, "kN\u00a0m");
}

QString Units::force(double force_N) const
{
    if (unitedStates())
        return significant(force_N / kPoundForce_N, "lbf");
    if (std::abs(force_N) < 999.5)
        return with(force_N, 0, "N");
    return significant(force_N / 1000, "kN");
}

QString Units::stress(double stress_Pa) const
{
    if (unitedStates())
        return significant(stress_Pa / (kPoundForce_N / (kInch_m * kInch_m)), "psi");
    return significant(stress_Pa / 1e6, "MPa");
}

QString Units::sectionModulus(double modulus_m3) const
{
    if (unitedStates())
        return significant(modulus_m3 / (kInch_m * kInch_m * kInch_m), "in³");
    return significant(modulus_m3 * 1e6, "cm³");
}

QString Units::density(double density_kg_m3) const
{
    if (unitedStates())
        return with(density_kg_m3 * kFoot_m * kFoot_m * kFoot_m / kPound_kg, 4, "lb/ft³");
    return significant(density_kg_m3, "kg/m³");
}

QString Units::temperature(double temperature_C) const
{
    if (unitedStates())
        return with(32.0 + 1.8 * temperature_C, 0, "°F");
    return with(temperature_C, 0, "°C");
}

QString Units::share(double share) const
{
    const double percent = 100 * share;
    return with(percent, std::abs(percent) < 9.95 ? 1 : 0, "%");
}

QString Units::hours(double hours) const
{
    return with(hours, 1, "h");
}

QString Units::angle(double angle_deg) const
{
    return number(angle_deg, 0) + QChar(0xb0);
}

QString Units::date(std::chrono::year_month_day date) const
{
    static const QRegularExpression weekday(QStringLiteral("\\W*dddd\\W*"));
    const QString format = locale_.dateFormat(QLocale::LongFormat).remove(weekday);
    const QDate day(static_cast<int>(date.year()), static_cast<int>(unsigned(date.month())),
                    static_cast<int>(unsigned(date.day())));
    return locale_.toString(day, format);
}

QString Units::month(int month) const
{
    return locale_.standaloneMonthName(month, QLocale::LongFormat);
}

QString Units::bearing(double bearing_deg)
{
    static constexpr std::array names{
        QT_TRANSLATE_NOOP("app::Units", "north"), QT_TRANSLATE_NOOP("app::Units", "north-east"),
        QT_TRANSLATE_NOOP("app::Units", "east"),  QT_TRANSLATE_NOOP("app::Units", "south-east"),
        QT_TRANSLATE_NOOP("app::Units", "south"), QT_TRANSLATE_NOOP("app::Units", "south-west"),
        QT_TRANSLATE_NOOP("app::Units", "west"),  QT_TRANSLATE_NOOP("app::Units", "north-west"),
    };
    const long eighth = std::lround(bearing_deg / 45.0) % 8;
    return QCoreApplication::translate("app::Units",
                                       names[static_cast<std::size_t>((eighth + 8) % 8)]);
}

std::optional<double> Units::parseLength_m(const QString& text) const
{
    return parseQuantity(text, locale_, kLengths, unitedStates() ? kFoot_m : 1.0);
}

std::optional<double> Units::parseDiameter_m(const QString& text) const
{
    return parseQuantity(text, locale_, kLengths, unitedStates() ? kInch_m : 0.01);
}

std::optional<double> Units::parseMass_kg(const QString& text) const
{
    return parseQuantity(text, locale_, kMasses, unitedStates() ? kPound_kg : 1.0);
}

std::optional<double> Units::parseSpeed_m_s(const QString& text) const
{
    // Shown both ways round: "90 km/h (25 m/s)" reads back as its first half.
    const QString first = text.section(QLatin1Char('('), 0, 0);
    return parseQuantity(first, locale_, kSpeeds,
                         measures_ == Measures::metric ? kKmh_m_s : kMph_m_s);
}

std::optional<double> Units::parseTemperature_C(const QString& text) const
{
    static const QRegularExpression degrees(QStringLiteral("\\s*°?\\s*([cf])$"));
    QString number = text.simplified().toLower();
    const auto unit = degrees.match(number);
    if (unit.hasMatch())
        number.truncate(unit.capturedStart());
    else if (number.endsWith(QStringLiteral("°")))
        number.chop(1);
    const bool fahrenheit =
        unit.hasMatch() ? unit.captured(1) == QLatin1String("f") : unitedStates();
    const auto value = parseQuantity(number, locale_, {}, 1.0);
    if (!value)
        return std::nullopt;
    return fahrenheit ? (*value - 32.0) / 1.8 : *value;
}

std::optional<double> Units::parseShare(const QString& text) const
{
    const auto share = parseQuantity(text, locale_, kShares, 0.01);
    // 70 times 0.01 is a little over 0.7: what was typed is what is kept.
    constexpr double kFine = 1e9;
    return share ? std::optional(std::round(*share * kFine) / kFine) : std::nullopt;
}

} // namespace app
