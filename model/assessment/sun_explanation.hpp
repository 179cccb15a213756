#pragma once

#include "model/light/daylight.hpp"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace model {

/// What one tree of the garden, or one told by its crown alone, keeps of a day's sun, and the leaf
/// that does so.
struct ShadeExplanation {
    std::string tree; ///< id, of a neighbour too
    double lost_h{};
    std::optional<double> leafShare; ///< on the day; blank: a neighbour
    Foliation foliation;
};

/// Why a planting has the direct sun that it has on a clear day.
struct SunExplanation {
    std::string planting; ///< id
    std::chrono::year_month_day date{};
    double dayLength_h{}; ///< sun's centre above the horizon
    double noon_deg{};    ///< the sun's greatest height
    light::PlantingSun sun;
    std::vector<ShadeExplanation> trees; ///< those that take any, the greatest first
};

/// \pre  validate(garden, tables) found no fault
/// \throws std::out_of_range  if there is no such planting
[[nodiscard]] SunExplanation explainSun(const Garden& garden, const Tables& tables,
                                        const std::string& planting,
                                        std::chrono::year_month_day date);

} // namespace model
