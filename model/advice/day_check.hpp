#pragma once

#include "model/advice/rule.hpp"

#include <chrono>
#include <optional>
#include <vector>

namespace model::advice {

/// The weather that a gardener reads off before going out with a saw. Blank: not known.
struct DayWeather {
    std::optional<double> air_C;    ///< in the shade
    std::optional<double> humidity; ///< relative, 0..1
    std::optional<double> gust_m_s; ///< expected while working
};

/// What of a day speaks against the work.
enum class DayRule {
    heat,        ///< what the air feels like to a person at work, shade
    heatInSun,   ///< the same in full sun
    heatForTree, ///< heavy cutting bares bark and takes the leaves that cool it
    wind,
    frost, ///< wood splits and footing is bad
};

/// A rule that speaks about the day: `found` against `limit`; degrees C or m/s.
struct DayFinding {
    DayRule rule{};
    Severity severity{}; ///< warn: take care; block: not today
    double found{};
    double limit{};
};

/// How hot moist air feels in the shade, degrees C: the heat index of the US National Weather
/// Service (Rothfusz 1990, SR 90-23, with its two adjustments; docs/methods/advice.md, A7). Equal
/// to the air below 26 C or so, by its own simple formula.
[[nodiscard]] double heatIndex_C(double air_C, double humidity);

/// Everything that the weather says against tree work, the gravest first. Without humidity the air
/// is taken at 50 %.
[[nodiscard]] std::vector<DayFinding> dayCheck(const DayWeather& weather);

/// From where on a rule speaks; degrees C or m/s. Frost speaks at and below its limit.
struct DayLimit {
    double care{};
    std::optional<double> stop; ///< blank: it never says 'not today'
};
[[nodiscard]] DayLimit dayLimit(DayRule rule);

/// Where the thresholds of a rule were published.
[[nodiscard]] const char* daySource(DayRule rule);

} // namespace model::advice
