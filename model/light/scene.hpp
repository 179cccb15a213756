#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"
#include "model/light/canopy.hpp"
#include "model/light/prism.hpp"
#include "model/species/species.hpp"

#include <chrono>
#include <span>
#include <vector>

namespace model::light {

/// A garden as light meets it on one day.
struct Scene {
    std::vector<Canopy> trees; ///< in Garden::trees order, then Garden::neighbours
    std::vector<Prism> structures;
};

/// \param foliations  one for each tree, in order, as the trees were sketched
/// \throws std::domain_error  on a species that the tables don't hold (unknownNames() finds it)
[[nodiscard]] Scene scene(const Garden& garden, std::span<const Foliation> foliations,
                          const Tables& tables, std::chrono::year_month_day date);

/// Share of leaf on each of the scene's trees on a date.
/// \throws std::domain_error  on a species that the tables don't hold
[[nodiscard]] std::vector<double> leafShares(const Garden& garden, const Tables& tables,
                                             std::chrono::year_month_day date);

} // namespace model::light
