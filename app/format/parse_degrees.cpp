#include "app/format/parse_degrees.hpp"

#include <QStringList>

namespace app {
namespace {

/// Takes the letter of a direction off either end: +1, -1, or 0 where there is none.
int takeDirection(QString& text, char positive, char negative)
{
    for (const auto& [letter, sign] : {std::pair(positive, 1), std::pair(negative, -1)}) {
        const QLatin1Char mark(letter);
        if (text.startsWith(mark)) {
            text = text.mid(1).trimmed();
            return sign;
        }
        if (text.endsWith(mark)) {
            text = text.chopped(1).trimmed();
            return sign;
        }
    }
    return 0;
}

} // namespace

std::optional<double> parseDegrees(const QString& typed, const QLocale& locale, char positive,
                                   char negative)
{
    QString text = typed.trimmed().toUpper();
    const int direction = takeDirection(text, positive, negative);
    text.replace(QChar(0x2212), QLatin1Char('-'));
    text.replace(locale.decimalPoint(), QStringLiteral("."));
    for (const char16_t mark : u"°º'\"′″’”")
        if (mark)
            text.replace(QChar(mark), QLatin1Char(' '));
    const bool minus = text.startsWith(QLatin1Char('-'));
    if (minus && direction != 0)
        return std::nullopt;
    const auto parts = (minus ? text.mid(1) : text).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    if (parts.isEmpty() || parts.size() > 3)
        return std::nullopt;
    double value = 0.0;
    double size = 1.0;
    for (qsizetype i = 0; i < parts.size(); ++i, size /= 60.0) {
        bool good = false;
        const double part = QLocale::c().toDouble(parts[i], &good);
        if (!good || part < 0.0 || (i > 0 && part >= 60.0) ||
            (i + 1 < parts.size() && parts[i].contains(QLatin1Char('.'))))
            return std::nullopt;
        value += size * part;
    }
    return minus || direction < 0 ? -value : value;
}

} // namespace app
