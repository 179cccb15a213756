#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

namespace app {

/// The locale of a language asked for by its code ("de", "en") with the land that the system is set
/// to; the system's own locale when none was asked for.
[[nodiscard]] QLocale localeOf(const QString& language);

/// The codes of the languages that the program speaks.
[[nodiscard]] QStringList languages();
/// The same by their own names, as who speaks one looks for it.
[[nodiscard]] QStringList languageNames();

/// Whether sentences differ in this locale from the English ones in the code.
[[nodiscard]] bool isTranslated(const QLocale& locale);

/// The code of the language that sentences are in since the last speak(): "en".
[[nodiscard]] QString languageOfWords();

/// From here on sentences, numbers and dates are this locale's: English sentences where the
/// program doesn't speak its language. Takes the place of an earlier call.
/// The translations belong to the QCoreApplication: while there is none only numbers and dates
/// change.
void speak(const QLocale& locale);

} // namespace app
