#include "model/light/month_rays.hpp"

#include "model/light/sample_day.hpp"
#include "model/light/sky_dome.hpp"
#include "model/light/sun_path.hpp"

#include <algorithm>

namespace model::light {
namespace {

constexpr double kMJ_per_W_h = 3600e-6;

void addSun(const Place& place, const SampleDay& day, std::chrono::seconds step,
            std::size_t leafState, MonthRays& month)
{
    for (const auto& sun : sunPath(place, day.date, step)) {
        const double energy = day.weight * sun.hours * kMJ_per_W_h;
        month.clearBeam_MJ_m2 += energy * sun.beam_W_m2 * sun.towards.z;
        month.clearDiffuse_MJ_m2 += energy * sun.diffuse_W_m2;
        const double sun_h = sun.shines ? day.weight * sun.hours : 0.0;
        month.rays.push_back({sun.towards, leafState, {sun_h, energy * sun.beam_W_m2, 0.0}});
    }
}

void addSky(int directions, double weight, std::size_t leafState, MonthRays& month)
{
    for (const Vec3 towards : skyDirections(directions))
        month.rays.push_back(
            {towards, leafState, {0.0, 0.0, weight * skyShare(towards, towards, directions)}});
}

} // namespace

MonthRays
monthRays(const Place& place, std::chrono::year_month month, const MonthCut& cut,
          const std::function<std::vector<double>(std::chrono::year_month_day)>& leafShares)
{
    MonthRays result;
    std::vector<double> weights; // of the leaf states: the sky is traced once for each
    for (const auto& day : daysOfMonth(month, cut.days)) {
        auto shares = leafShares(day.date);
        const auto known = std::ranges::find(result.leafStates, shares);
        const auto state = static_cast<std::size_t>(known - result.leafStates.begin());
        if (state == weights.size()) {
            result.leafStates.push_back(std::move(shares));
            weights.push_back(0.0);
        }
        weights[state] += day.weight;
        addSun(place, day, cut.step, state, result);
    }
    for (std::size_t state = 0; state < weights.size(); ++state)
        addSky(cut.skyDirections, weights[state], state, result);
    std::ranges::stable_sort(result.rays, {}, &MonthRay::leafState);
    return result;
}

} // namespace model::light
