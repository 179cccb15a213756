#pragma once

#include "app/words/wording.hpp"

#include <vector>

namespace app {

/// What the wind crosses before it reaches the garden, as a gardener can judge it, in the order of
/// model::Exposure.
[[nodiscard]] QStringList exposureWords();

/// A gust to reckon with, and in plain words what it stands for.
struct GustChoice {
    double gust_m_s{};
    QString words;
};
/// Start values for a garden's design gust, weakest first.
[[nodiscard]] std::vector<GustChoice> gustChoices(const Units& units);

/// "Lengths in metres, girths in centimetres, wind in km/h."
[[nodiscard]] QString measuresWords(Measures measures);

} // namespace app
