#include "model/light/year_rays.hpp"

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
        month.sun.push_back({sun.towards, leafState, {sun_h, energy * sun.beam_W_m2, 0.0}});
    }
}

std::size_t leafState(std::vector<double> shares, YearRays& year)
{
    const auto known = std::ranges::find(year.leafStates, shares);
    const auto state = static_cast<std::size_t>(known - year.leafStates.begin());
    if (known == year.leafStates.end())
        year.leafStates.push_back(std::move(shares));
    return state;
}

} // namespace

YearRays yearRays(const Place& place, std::chrono::year year, const YearCut& cut,
                  const std::function<std::vector<double>(std::chrono::year_month_day)>& leafShares)
{
    YearRays result;
    for (unsigned m = 1; m <= 12; ++m) {
        auto& month = result.months[m - 1];
        for (const auto& day : daysOfMonth(year / std::chrono::month{m}, cut.daysPerMonth)) {
            const std::size_t state = leafState(leafShares(day.date), result);
            addSun(place, day, cut.step, state, month);
            month.skyWeights.resize(std::max(month.skyWeights.size(), state + 1));
            month.skyWeights[state] += day.weight;
        }
    }
    for (const Vec3 towards : skyDirections(cut.skyDirections))
        result.sky.push_back(
            {towards, 0, {0.0, 0.0, skyShare(towards, towards, cut.skyDirections)}});
    return result;
}

} // namespace model::light
