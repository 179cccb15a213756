#pragma once

#include <QLocale>
#include <QString>
#include <QTranslator>

#include <memory>

namespace app {

/// The program's words in the language of `locale`, as built in (":/i18n/underbough_de.qm"); null
/// where it has them in English only. It speaks once QCoreApplication::installTranslator() has it.
[[nodiscard]] std::unique_ptr<QTranslator> translationFor(const QLocale& locale);

/// The language of the words, which is that of the translation in use, as BCP 47 names it: "en".
[[nodiscard]] QString languageOfWords();

} // namespace app
