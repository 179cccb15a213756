#include "app/words/fault_words.hpp"

#include "app/language/language.hpp"
#include "app/words/fault_phrases.hpp"
#include "app/words/wording.hpp"
#include "model/escaped.hpp"

#include <QLocale>
#include <QRegularExpression>

#include <vector>

namespace app {
namespace {

constexpr const char* kFigure = "-?[0-9][0-9.]*(?:e[+-]?[0-9]+)?|-?infinity|NaN";

/// Where a phrase has a place for words or a figure: the number is the first capture.
const QRegularExpression& places()
{
    static const QRegularExpression form(QStringLiteral("%L?([0-9])"));
    return form;
}

struct Phrase {
    const char* english;
    QRegularExpression form; ///< a capture for each of its places, which stand in order
};

Phrase phraseOf(const char* english)
{
    const QString text = QString::fromUtf8(english);
    QString form;
    qsizetype done = 0;
    for (auto all = places().globalMatch(text); all.hasNext();) {
        const auto place = all.next();
        form += QRegularExpression::escape(text.mid(done, place.capturedStart() - done));
        // Either in quotes as a whole or not at all: what a person wrote is no phrase of ours.
        form += place.capturedLength() > 2 ? QStringLiteral("(%1)").arg(QLatin1String(kFigure))
                                           : QStringLiteral("(\".*\"|[^\"].*?)");
        done = place.capturedEnd();
    }
    form += QRegularExpression::escape(text.mid(done));
    return {english, QRegularExpression(QRegularExpression::anchoredPattern(form))};
}

const std::vector<Phrase>& phrases()
{
    static const auto all = [] {
        std::vector<Phrase> made;
        for (const char* english : faultPhrases())
            made.push_back(phraseOf(english));
        return made;
    }();
    return all;
}

QString translated(const QString& english);

/// The translated phrase with its places filled, each by what stood there in English.
QString filled(const QString& phrase, const QRegularExpressionMatch& english)
{
    QString text;
    qsizetype done = 0;
    for (auto all = places().globalMatch(phrase); all.hasNext();) {
        const auto place = all.next();
        text += phrase.mid(done, place.capturedStart() - done);
        text += translated(english.captured(place.captured(1).toInt()));
        done = place.capturedEnd();
    }
    return text + phrase.mid(done);
}

QString translated(const QString& english)
{
    static const QRegularExpression figure(
        QRegularExpression::anchoredPattern(QLatin1String(kFigure)));
    if (figure.match(english).hasMatch())
        return QString(english).replace(QLatin1Char('.'), QLocale().decimalPoint());
    for (const auto& [phrase, form] : phrases())
        if (const auto match = form.match(english); match.hasMatch())
            return filled(Words::tr(phrase), match);
    return english;
}

} // namespace

QString faultLine(const model::Fault& fault)
{
    const QString found = faultWords(fault.found);
    const QString needed = faultWords(fault.expected);
    if (fault.pointer.empty())
        return Words::tr("found %1, expected %2").arg(found, needed);
    return Words::tr("%1: found %2, expected %3")
        .arg(QString::fromStdString(model::escaped(fault.pointer)), found, needed);
}

QString faultWords(const std::string& english)
{
    const QString text = QString::fromStdString(model::escaped(english));
    return languageOfWords() == QLatin1String("en") ? text : translated(text);
}

} // namespace app
