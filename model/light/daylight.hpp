#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"
#include "model/light/sun.hpp"
#include "model/species/species.hpp"

#include <chrono>
#include <span>
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

/// Sun on every planting on one clear day, from one midnight to the next by the sun (UTC shifted
/// by the longitude), trees in leaf as on the date. A hedge is tested at its top, a bed or lawn at
/// its height, over a grid of points.
///
/// Method, sources and limits: docs/methods/light.md.
/// \param foliations  one for each tree, in order, of the trees as they were sketched: a tree that
///                    has been cut since keeps the leaf per volume it had
/// \throws std::domain_error  on a species that the tables don't hold (unknownNames() finds it)
[[nodiscard]] std::vector<PlantingSun> plantingSun(const Garden& garden,
                                                   std::span<const Foliation> foliations,
                                                   const Tables& tables,
                                                   std::chrono::year_month_day date);

/// The same for trees that stand as they were sketched.
[[nodiscard]] std::vector<PlantingSun> plantingSun(const Garden& garden, const Tables& tables,
                                                   std::chrono::year_month_day date);

/// One for each tree, in order, of the trees as they stand. Costs milliseconds a tree: keep it.
[[nodiscard]] std::vector<Foliation> foliations(const Garden& garden, const Tables& tables);

/// The outline that one tree's crown and stem throw on the ground at an instant, on plan, garden
/// frame; empty when the sun is down (below 2 degrees, where shadows have no useful end).
[[nodiscard]] Region shadow(const Tree& tree, const SunPosition& sun, const Ground& ground = {});

/// Share of living leaf on the tree on a date (0 bare .. 1 full), as leafShare() but without dead
/// leaves that are held over winter.
[[nodiscard]] double greenShare(const Species& species, const Place& place,
                                std::chrono::year_month_day date, const LeafDates& seen = {});

/// Share of leaf on the tree on a date (0 bare .. 1 full), by habit, latitude and altitude, or by
/// the dates that the gardener has seen.
[[nodiscard]] double leafShare(const Species& species, const Place& place,
                               std::chrono::year_month_day date, const LeafDates& seen = {});

} // namespace model::light
