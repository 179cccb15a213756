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
    std::vector<Canopy> trees; ///< in Garden::trees order
    std::vector<Prism> structures;
};

/// \param foliations  one for each tree, in order, as the trees were sketched
/// \throws std::domain_error  on a species that the tables don't hold (unknownNames() finds it)
[[nodiscard]] Scene scene(const Garden& garden, std::span<const Foliation> foliations,
                          const Tables& tables, std::chrono::year_month_day date);

/// What a ray meets: the share of light each part of the garden lets through.
struct RayLight {
    double structures{1.0};
    std::vector<double> trees; ///< one for each tree; left at 1 behind a wall
};

/// \param direction  unit, towards the light, pointing up
void trace(const Scene& scene, Vec3 from, Vec3 direction, RayLight& light);

} // namespace model::light
