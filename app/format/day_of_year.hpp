#pragma once

#include <QLocale>
#include <QString>

#include <chrono>
#include <optional>

namespace app {

/// A day without its year as people write it: "2 May", "May 2", "2. Mai".
[[nodiscard]] QString dayText(std::chrono::month_day day, const QLocale& locale);

/// The other way round; "05-02" is understood everywhere. \returns blank if it can't be read
[[nodiscard]] std::optional<std::chrono::month_day> parseDayOfYear(const QString& text,
                                                                   const QLocale& locale);

} // namespace app
