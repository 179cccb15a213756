#pragma once

#include "app/format/units.hpp"
#include "model/assessment/assessment.hpp"

#include <QString>
#include <QStringList>

namespace app {

/// The Beaufort force of the weather that brings gusts of this speed, 0 .. 12
/// (model/load/forecast.hpp). The scale is one of mean wind over open ground; gusts are stronger.
[[nodiscard]] int beaufortOfGust(double gust_m_s);

/// The scale's own word for a force: "calm", "fresh breeze", "storm".
[[nodiscard]] QString beaufortWord(int force);

/// "force 9, severe gale".
[[nodiscard]] QString forceWords(int force);

/// How the forecast's words were taken, and the air if it is not the standard one; may be empty.
[[nodiscard]] QStringList windRemarks(const model::Question& question, const Units& units);

} // namespace app
