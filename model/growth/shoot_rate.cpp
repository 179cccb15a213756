#include "model/growth/shoot_rate.hpp"

#include "model/growth/measured_growth.hpp"

#include <algorithm>
#include <cmath>

namespace model::growth {
namespace {

// A tenth of what can be grown lies below the lower end of the published range, a tenth above.
constexpr double kTenths_in_spreads = 2.563;

// Follett et al. 2016 and Perrette et al. 2020: shoots are longer after harder cuts, so a quarter
// of the leaf moves the mean to the upper end. The amount is assumed.
constexpr double kDoseAtUpperEnd = 0.25;

// Old and stressed trees: the direction is common practice, the half is assumed.
constexpr double kWeakGrowth = 0.5;

// From one year to another; assumed.
constexpr double kYearToYear = 0.20;

// A tape twice, held by eye to shoots that move; and a tip's place, sighted twice. Assumed.
constexpr double kTapedTwice_m = 0.10;
constexpr double kSightedTwice_m = 0.20;

bool hasHangingShoots(const Tree& tree)
{
    return std::ranges::any_of(
        tree.limbs, [](const Limb& limb) { return limb.foliage && limb.foliage->hanging_m > 0.0; });
}

} // namespace

double undersideShare(const Limb& limb)
{
    if (!limb.foliage)
        return 0.0;
    return limb.foliage->hanging_m > 0.0 ? 1.0 : kUndersideShare;
}

double undersideShare(const Tree& tree)
{
    return hasHangingShoots(tree) ? 1.0 : kUndersideShare;
}

ShootRate shootRate(const Tree& tree, const Species& species, const Place& place, double leafTaken)
{
    const auto& practice = species.practice;
    const double weak =
        tree.vigour == Vigour::old || tree.vigour == Vigour::stressed ? kWeakGrowth : 1.0;
    const double low = practice.shootLow_m * weak;
    const double high = practice.shootHigh_m * weak;
    const double dose = std::clamp(leafTaken / kDoseAtUpperEnd, 0.0, 1.0);
    const double middle = (low + high) / 2.0;
    const double mean = std::lerp(middle, high, dose);
    // Figures without a range are known no better than a fifth.
    const double spread = std::max((high - low) / kTenths_in_spreads, 0.2 * middle);

    double weight = 1.0 / (spread * spread);
    double sum = mean * weight;
    int measurements = 0;
    for (const auto& measured : measuredGrowth(tree, practice.shootPattern, place)) {
        const double grown = measured.share * measured.years; // m moved for each metre a year
        const double twice = measured.at == MeasuredAt::tip ? kSightedTwice_m : kTapedTwice_m;
        const double scatter = std::hypot(twice, kYearToYear * mean * grown);
        weight += grown * grown / (scatter * scatter);
        sum += grown * measured.moved_m / (scatter * scatter);
        ++measurements;
    }
    // Headroom can have been gained for other reasons; shoots don't shrink.
    const double learnt = std::max(sum / weight, 0.1 * mean);
    return {learnt, std::hypot(std::sqrt(1.0 / weight), kYearToYear * learnt), mean, measurements};
}

} // namespace model::growth
