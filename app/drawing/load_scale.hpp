#pragma once

#include <QStringList>

#include <array>

namespace app {

/// Steps by which limbs are tinted: how much of its expected strength is asked of a limb at the
/// gust. Lower ends; the first step starts at 0, the last has no end. Where they lie is a
/// judgement (assumed): 0.5 is the share from which app/words points a limb out, 1 is expected
/// failure.
inline constexpr std::array<double, 5> kLoadSteps{0.0, 0.15, 0.3, 0.5, 1.0};

/// The step of a utilisation: 0 .. 4.
[[nodiscard]] int loadStep(double utilisation);

/// The steps in words, lightest first, as a legend says them.
[[nodiscard]] QStringList loadStepWords();

} // namespace app
