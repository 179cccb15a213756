#pragma once

#include "model/garden/garden.hpp"
#include "model/light/sun.hpp"
#include "model/species/species.hpp"

#include <chrono>
#include <string>
#include <vector>

namespace model::light {

/// What keeps one tree's light from a planting, on one day.
struct TreeShade {
    std::string tree;      ///< id
    double sunWithout_h{}; ///< effective sun hours if this tree alone were away
    double lost_h{};       ///< sunWithout_h - sun_h: what taking it away would give back
};

/// A planting's direct sun on one clear day. Effective sun hours: the integral of the share of the
/// beam let through, while the clear-sky direct beam is over 120 W/m2 (WMO sunshine threshold).
struct PlantingSun {
    std::string planting;    ///< id
    double openSky_h{};      ///< with no tree and no structure
    double sun_h{};          ///< as things stand, mean over the planting
    double withoutTrees_h{}; ///< structures only
    std::vector<TreeShade> trees;
    std::vector<Point2> points_m;      ///< where it was tested
    std::vector<double> sunAtPoints_h; ///< as things stand, one for each point
};

/// Sun on every planting on one day, from one midnight to the next by the sun (UTC shifted by the
/// longitude), trees in leaf by `inLeaf` (one for each tree).
[[nodiscard]] std::vector<PlantingSun> plantingSun(const Garden& garden, const Tables& tables,
                                                   std::chrono::year_month_day date);

/// The outline that one tree's crown and stem throw on level ground at an instant, garden frame;
/// empty when the sun is down (below 2 degrees, where shadows have no useful end).
[[nodiscard]] Region shadow(const Tree& tree, const SunPosition& sun);

/// Share of leaf on the tree on a date (0 bare .. 1 full), by habit, latitude and altitude.
[[nodiscard]] double leafShare(const Species& species, const Place& place,
                               std::chrono::year_month_day date);

} // namespace model::light
