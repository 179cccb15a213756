#pragma once

#include <QLocale>
#include <QPageSize>

namespace app {

/// The paper that is usual where the locale is spoken: Letter in North America and a few more,
/// else A4 (CLDR measurement data, paper size; from memory).
[[nodiscard]] QPageSize::PageSizeId usualPaper(const QLocale& locale);

} // namespace app
