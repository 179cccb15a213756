#pragma once

#include "model/light/tally.hpp"

#include <array>
#include <chrono>
#include <functional>
#include <vector>

namespace model::light {

/// One direction of light and what it is worth.
struct LightRay {
    Vec3 towards{};          ///< unit
    std::size_t leafState{}; ///< index into YearRays::leafStates
    Light3 facing;           ///< to a surface that faces it; sun hours: to any that it lights
};

/// The sun of one month's mean day, in steps on sample days, and which sky goes with it.
struct MonthRays {
    std::vector<LightRay> sun;
    std::vector<double> skyWeights; ///< per leaf state: share of the month
    double clearBeam_MJ_m2{};       ///< of the open sky, on level ground
    double clearDiffuse_MJ_m2{};
};

/// Everything that lights a garden over a year. The sky is the same every day: what trees leave of
/// it depends on their leaves alone, so it is traced once for each state of them.
struct YearRays {
    std::vector<std::vector<double>> leafStates; ///< leaf shares of all trees
    std::array<MonthRays, 12> months;
    std::vector<LightRay> sky; ///< an even sky; of no leaf state
};

/// How finely a year is cut up.
struct YearCut {
    std::chrono::seconds step{};
    int daysPerMonth{};
    int skyDirections{};
};

/// \param leafShares  of all trees on a day
[[nodiscard]] YearRays
yearRays(const Place& place, std::chrono::year year, const YearCut& cut,
         const std::function<std::vector<double>(std::chrono::year_month_day)>& leafShares);

/// What a ray is worth to a surface that it strikes under an angle.
/// \param cosine  of the angle between the ray and the surface's normal, > 0
[[nodiscard]] inline Light3 worth(const LightRay& ray, double cosine)
{
    return {ray.facing.sun_h, cosine * ray.facing.beam, cosine * ray.facing.sky};
}

} // namespace model::light
