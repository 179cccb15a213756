#pragma once

#include "model/light/tally.hpp"

#include <chrono>
#include <functional>
#include <vector>

namespace model::light {

/// One direction of light and what it is worth in a month's mean day.
struct MonthRay {
    Vec3 towards{};          ///< unit
    std::size_t leafState{}; ///< index into MonthRays::leafStates
    Light3 facing;           ///< to a surface that faces it; sun hours: to any that it lights
};

/// Everything that lights a garden in the mean day of one month: the sun in steps on sample days,
/// and the sky once for each state of the leaves. Rays of one leaf state are neighbours.
struct MonthRays {
    std::vector<std::vector<double>> leafStates; ///< leaf shares of all trees
    std::vector<MonthRay> rays;
    double clearBeam_MJ_m2{}; ///< of the open sky, on level ground
    double clearDiffuse_MJ_m2{};
};

/// How finely a month is cut up.
struct MonthCut {
    std::chrono::seconds step{};
    int days{};
    int skyDirections{};
};

/// \param leafShares  of all trees on a day
[[nodiscard]] MonthRays
monthRays(const Place& place, std::chrono::year_month month, const MonthCut& cut,
          const std::function<std::vector<double>(std::chrono::year_month_day)>& leafShares);

/// What a ray is worth to a surface that it strikes under an angle.
/// \param cosine  of the angle between the ray and the surface's normal, > 0
[[nodiscard]] inline Light3 worth(const MonthRay& ray, double cosine)
{
    return {ray.facing.sun_h, cosine * ray.facing.beam, cosine * ray.facing.sky};
}

} // namespace model::light
