#pragma once

#include <QLocale>
#include <QString>

#include <optional>

namespace app {

/// A latitude or longitude as people write it: "47.38", "-33.9", "47 22 12 N", "8°32' E", "W 8.5".
/// The locale's decimal mark and the full stop are both understood.
///
/// \param positive, negative  the letters of the two directions: N and S, or E and W
/// \returns degrees; blank if it can't be read, or a part is out of range
[[nodiscard]] std::optional<double> parseDegrees(const QString& typed, const QLocale& locale,
                                                 char positive, char negative);

} // namespace app
