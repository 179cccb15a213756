#pragma once

#include "model/garden/cut.hpp"
#include "model/garden/garden.hpp"
#include "model/light/year_light.hpp"
#include "model/species/species.hpp"

#include <atomic>
#include <string>
#include <vector>

namespace model {

/// What one cut, made alone, would bring one surface on a mean day of the growing season.
struct CutLight {
    std::string tree; ///< id
    Cut cut;
    double leafShare{}; ///< of the tree's leaf as it stands that the cut takes
    light::DayLight gained;
    light::DayLight perPercent; ///< gained, by percent of leaf
};

/// A surface's year, and the cuts that would give light back to it.
struct SurfaceYear {
    light::SurfaceLight light;
    std::vector<CutLight> cuts; ///< the cheapest hour of sun first; only those worth telling
};

/// A year of light on every planting.
struct LightYear {
    std::chrono::year year{};
    light::Weather weather;
    std::vector<SurfaceYear> surfaces; ///< of each planting its level one, then its faces
};

/// Less than this of light a day is not told: three minutes of sun and a tenth of a mole, under
/// what a sketch can show.
inline constexpr double kNotableSun_h = 0.05;
inline constexpr double kNotableDli_mol = 0.1;
[[nodiscard]] bool isNotable(const light::DayLight& light);

struct LightAsk {
    std::chrono::year year{};
    std::string onlyPlanting; ///< id; empty: all
    bool withCuts{true};
    light::LightDetail detail;
};

/// \pre  validate(garden) and unknownNames(garden, tables) found no fault
/// \param cancel  looked at between sample days and cuts; set: the result has no surfaces
[[nodiscard]] LightYear lightYear(const Garden& garden, const Tables& tables, const LightAsk& ask,
                                  const std::atomic<bool>* cancel = nullptr);

} // namespace model
