#include "model/growth/shoot_rate.hpp"

#include "model/growth/shoot_season.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

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

// A tape twice, held by eye to shoots that move; assumed.
constexpr double kTapedTwice_m = 0.10;

// Years of growth that are too few to learn from.
constexpr double kLeastYears = 0.05;

/// Headroom lost over one strip between two visits.
struct Loss {
    double years{}; ///< of growth between them
    double lost_m{};
};

std::vector<const Visit*> byDate(const Tree& tree)
{
    std::vector<const Visit*> visits;
    for (const auto& visit : tree.visits)
        visits.push_back(&visit);
    std::ranges::stable_sort(visits, {}, [](const Visit* v) { return v->date; });
    return visits;
}

/// How the strip was left, if that is known. A visit without cuts leaves it as it found it.
std::optional<double> leftAt_m(const Visit& visit, const HeadroomRecord& record)
{
    return record.after_m || !visit.cuts.empty() ? record.after_m : record.before_m;
}

std::vector<Loss> losses(const Tree& tree, ShootPattern pattern, const Place& place)
{
    struct Left {
        std::string strip;
        double clock{};
        double height_m{};
    };
    std::vector<Left> known;
    std::vector<Loss> all;
    for (const auto* visit : byDate(tree)) {
        const double clock = growthClock(pattern, place, std::chrono::sys_days{visit->date});
        for (const auto& record : visit->headroom) {
            const auto last = std::ranges::find(known, record.strip, &Left::strip);
            if (last != known.end() && record.before_m && clock - last->clock >= kLeastYears)
                all.push_back({clock - last->clock, last->height_m - *record.before_m});
            const auto left = leftAt_m(*visit, record);
            if (last != known.end())
                known.erase(last);
            if (left)
                known.push_back({record.strip, clock, *left});
        }
        // A cut over a strip that nobody measured leaves it at a height nobody knows.
        if (!visit->cuts.empty())
            std::erase_if(known, [&](const Left& left) {
                return std::ranges::none_of(visit->headroom, [&](const HeadroomRecord& record) {
                    return record.strip == left.strip;
                });
            });
    }
    return all;
}

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

    const double underside = hasHangingShoots(tree) ? 1.0 : kUndersideShare;
    double weight = 1.0 / (spread * spread);
    double sum = mean * weight;
    int measurements = 0;
    for (const auto& loss : losses(tree, practice.shootPattern, place)) {
        const double grown = underside * loss.years; // m lost for each metre a year
        const double scatter = std::hypot(kTapedTwice_m, kYearToYear * mean * grown);
        weight += grown * grown / (scatter * scatter);
        sum += grown * loss.lost_m / (scatter * scatter);
        ++measurements;
    }
    // Headroom can have been gained for other reasons; shoots don't shrink.
    const double learnt = std::max(sum / weight, 0.1 * mean);
    return {learnt, std::hypot(std::sqrt(1.0 / weight), kYearToYear * learnt), mean, measurements};
}

} // namespace model::growth
