#pragma once

#include "app/report/json_text.hpp"
#include "model/assessment/light_year.hpp"

#include <optional>

namespace app {

/// The surfaces of one planting: months, growing season, who takes the light, what cuts give back.
/// \param month  blank: all twelve
[[nodiscard]] Json surfacesJson(const model::LightYear& year, const std::string& planting,
                                std::optional<std::chrono::month> month,
                                const model::Garden& garden);

/// Share of bright sunshine of each month that the year was reckoned with; null: clear skies.
[[nodiscard]] Json sunshineJson(const model::light::Weather& weather);

/// The months that count for plants at a place, 1..12.
[[nodiscard]] Json growingMonthsJson(const model::Place& place);

} // namespace app
