#pragma once

#include <QLocale>
#include <QString>

#include <optional>
#include <span>

namespace app {

/// A unit as people write it, and its size in SI.
struct UnitName {
    const char* name; ///< lower case, UTF-8
    double inSi;
};

/// Reads one or more numbers with units, each unit smaller than the one before ("8 ft 2 in"), as
/// one SI value. The locale's decimal mark and the full stop are both understood, and so are
/// fractions ("2 1/2 in"); digits are not grouped. A minus may stand in front of it all.
///
/// \param alone  size in SI of the unit meant when a single number has none
[[nodiscard]] std::optional<double> parseQuantity(const QString& text, const QLocale& locale,
                                                  std::span<const UnitName> units, double alone);

} // namespace app
