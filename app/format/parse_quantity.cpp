#include "app/format/parse_quantity.hpp"

#include <QRegularExpression>

#include <cmath>
#include <limits>

namespace app {
namespace {

/// A number and the unit behind it, as typed.
struct Term {
    QString number;
    QString unit;
};

std::optional<double> toDouble(const QString& digits, QLocale locale)
{
    locale.setNumberOptions(QLocale::RejectGroupSeparator);
    QLocale plain = QLocale::c();
    plain.setNumberOptions(QLocale::RejectGroupSeparator);
    bool ok = false;
    double value = locale.toDouble(digits, &ok);
    if (!ok)
        value = plain.toDouble(digits, &ok);
    if (!ok || !std::isfinite(value))
        return std::nullopt;
    return value;
}

/// "2.5", "1/2" or "2 1/2".
std::optional<double> toNumber(const QString& text, const QLocale& locale)
{
    static const QRegularExpression fraction(QStringLiteral("^(?:(\\d+)\\s+)?(\\d+)/(\\d+)$"));
    const auto match = fraction.match(text);
    if (!match.hasMatch())
        return toDouble(text, locale);
    const double divisor = match.captured(3).toDouble();
    if (divisor == 0.0)
        return std::nullopt;
    return match.captured(1).toDouble() + match.captured(2).toDouble() / divisor;
}

/// Takes the next term off the front of `rest`.
std::optional<Term> takeTerm(QString& rest)
{
    static const QRegularExpression term(
        QStringLiteral("^((?:\\d+\\s+)?\\d+/\\d+|[\\d.,]+)\\s*([^\\d\\s.,][^\\d\\s.,]*)?\\s*"));
    const auto match = term.match(rest);
    if (!match.hasMatch())
        return std::nullopt;
    rest.remove(0, match.capturedLength());
    return Term{match.captured(1), match.captured(2)};
}

std::optional<double> sizeOf(const QString& unit, std::span<const UnitName> units)
{
    for (const UnitName& known : units)
        if (unit == QString::fromUtf8(known.name))
            return known.inSi;
    return std::nullopt;
}

} // namespace

std::optional<double> parseQuantity(const QString& text, const QLocale& locale,
                                    std::span<const UnitName> units, double alone)
{
    QString rest = text.simplified().toLower();
    const bool negative = rest.startsWith(QLatin1Char('-')) || rest.startsWith(QChar(0x2212));
    if (negative)
        rest = rest.mid(1).trimmed();

    double sum = 0.0;
    double sizeBefore = std::numeric_limits<double>::infinity();
    for (bool first = true; first || !rest.isEmpty(); first = false) {
        const auto term = takeTerm(rest);
        if (!term)
            return std::nullopt;
        const bool bare = first && rest.isEmpty() && term->unit.isEmpty();
        const auto size = bare ? alone : sizeOf(term->unit, units);
        const auto number = toNumber(term->number, locale);
        if (!size || !number || !(*size < sizeBefore))
            return std::nullopt;
        sum += *number * *size;
        sizeBefore = *size;
    }
    return negative ? -sum : sum;
}

} // namespace app
