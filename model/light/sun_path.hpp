#pragma once

#include "model/garden/place.hpp"
#include "model/light/sun.hpp"

#include <chrono>
#include <vector>

namespace model::light {

/// The sun in the middle of a short time.
struct SunStep {
    Instant middle{};
    Vec3 towards{}; ///< unit
    SunPosition position;
    double beam_W_m2{};    ///< clear sky, facing the sun
    double diffuse_W_m2{}; ///< clear sky, on level ground
    double hours{};        ///< how long the step is
    bool shines{};         ///< the clear-sky beam is over the sunshine threshold
};

/// The times of one day with the sun up, from midnight to midnight by the sun (UTC shifted by the
/// longitude), in equal steps no longer than `step`. Sunrise, sunset and the ends of the sunshine
/// are found to a second, so the hours add up to the day's whatever the step.
[[nodiscard]] std::vector<SunStep> sunPath(const Place& place, std::chrono::year_month_day date,
                                           std::chrono::seconds step);

/// 1 January is 1.
[[nodiscard]] int dayOfYear(std::chrono::year_month_day date);

} // namespace model::light
