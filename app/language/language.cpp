#include "app/language/language.hpp"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

#include <array>
#include <clocale>

namespace app {
namespace {

// The sentences of the code, the names of plants, which are in its tables, and what the gardeners
// of the example gardens call things.
constexpr std::array kCatalogues = {"underbough", "plants", "examples"};

void forget()
{
    const QCoreApplication* application = QCoreApplication::instance();
    if (!application)
        return;
    for (auto* translator : application->findChildren<QTranslator*>())
        delete translator; // which also takes it off the application
}

/// Does nothing where there is no such file: Qt's own sentences come in a package of their own.
void add(const QString& file)
{
    auto* translator = new QTranslator(QCoreApplication::instance());
    if (translator->load(file))
        QCoreApplication::installTranslator(translator);
}

} // namespace

QLocale localeOf(const QString& language)
{
    const QLocale system = QLocale::system();
    const QLocale asked(language);
    const bool plain = system.language() == QLocale::C; // English of no land, and metric
    if (language.isEmpty() || asked.language() == (plain ? QLocale::English : system.language()))
        return system;
    return QLocale(asked.language(), system.territory());
}

QStringList languages()
{
    return {QStringLiteral("de"), QStringLiteral("en")};
}

QStringList languageNames()
{
    return {QStringLiteral("Deutsch"), QStringLiteral("English")};
}

bool isTranslated(const QLocale& locale)
{
    return locale.language() == QLocale::German;
}

QString languageOfWords()
{
    const QLocale locale;
    return isTranslated(locale) ? QLocale::languageToCode(locale.language()) : QStringLiteral("en");
}

void speak(const QLocale& locale)
{
    QLocale::setDefault(locale);
    std::setlocale(LC_NUMERIC, "C"); // Qt's application took the system's: files keep their point
    forget();
    if (!QCoreApplication::instance())
        return;
    if (!isTranslated(locale)) {
        add(QStringLiteral(":/language/underbough_en")); // singular and plural
        return;
    }
    const QString ending = QLatin1Char('_') + QLocale::languageToCode(locale.language());
    add(QLibraryInfo::path(QLibraryInfo::TranslationsPath) + QStringLiteral("/qtbase") + ending);
    for (const char* catalogue : kCatalogues)
        add(QStringLiteral(":/language/") + QLatin1String(catalogue) + ending);
}

} // namespace app
