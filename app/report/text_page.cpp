#include "app/report/text_page.hpp"

#include <QStringList>

namespace app {

void TextPage::wrapped(const QString& text, const QString& first, const QString& others)
{
    QString line = first;
    bool empty = true;
    for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (!empty && line.size() + 1 + word.size() > width_) {
            text_ += line + QLatin1Char('\n');
            line = others;
            empty = true;
        }
        if (!empty)
            line += QLatin1Char(' ');
        line += word;
        empty = false;
    }
    text_ += line + QLatin1Char('\n');
}

void TextPage::title(const QString& text)
{
    gap();
    wrapped(text, {}, {});
    text_ += QString(qMin<qsizetype>(text.size(), width_), QLatin1Char('=')) + QLatin1Char('\n');
}

void TextPage::heading(const QString& text)
{
    gap();
    wrapped(text, {}, {});
    text_ += QString(qMin<qsizetype>(text.size(), width_), QLatin1Char('-')) + QLatin1Char('\n');
}

void TextPage::paragraph(const QString& text)
{
    wrapped(text, {}, {});
}

void TextPage::bullet(const QString& text)
{
    wrapped(text, QStringLiteral("  - "), QStringLiteral("    "));
}

void TextPage::numbered(int number, const QString& text)
{
    const QString lead = QStringLiteral("%1. ").arg(number, 3);
    wrapped(text, lead, QString(lead.size(), QLatin1Char(' ')));
}

void TextPage::below(const QString& text)
{
    wrapped(text, QStringLiteral("     - "), QStringLiteral("       "));
}

void TextPage::row(const QString& line)
{
    text_ += line + QLatin1Char('\n');
}

void TextPage::gap()
{
    if (!text_.isEmpty() && !text_.endsWith(QLatin1String("\n\n")))
        text_ += QLatin1Char('\n');
}

QString TextPage::text() const
{
    QString plain = text_;
    return plain.replace(QChar::Nbsp, QLatin1Char(' '));
}

} // namespace app
