#include "app/words/translation.hpp"

#include "app/words/wording.hpp"

namespace app {

std::unique_ptr<QTranslator> translationFor(const QLocale& locale)
{
    auto translator = std::make_unique<QTranslator>();
    const bool found = translator->load(locale, QStringLiteral("underbough"), QStringLiteral("_"),
                                        QStringLiteral(":/i18n"));
    return found ? std::move(translator) : nullptr;
}

QString languageOfWords()
{
    return Words::tr("en", "the language that you translate into, as BCP 47 names it");
}

} // namespace app
