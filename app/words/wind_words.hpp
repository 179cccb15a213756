#pragma once

#include <QString>

namespace app {

/// The Beaufort force of the weather that brings gusts of this speed, 0 .. 12.
///
/// Beaufort's scale is one of mean wind. For forces 8 to 11 the gusts are those at which the
/// Met Office gives the same warning (marine forecasts glossary: gale, gusts 43-51 knots; severe
/// gale, 52-60; storm, 61-68; violent storm, 69 and more). For the others the lower end of the mean
/// wind is taken times 1.26, the ratio that holds between the two in that glossary (43 to 34,
/// 52 to 41, 61 to 48, 69 to 56 knots): assumed.
[[nodiscard]] int beaufortOfGust(double gust_m_s);

/// The scale's own word for a force: "calm", "fresh breeze", "storm".
[[nodiscard]] QString beaufortWord(int force);

} // namespace app
