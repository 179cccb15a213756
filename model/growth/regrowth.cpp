#include "model/growth/regrowth.hpp"

#include "model/growth/shoot_season.hpp"
#include "model/headroom/headroom.hpp"

#include <algorithm>
#include <limits>

namespace model::growth {
namespace {

using std::chrono::sys_days;
using std::chrono::year_month_day;

// What hangs higher than this above the needed headroom is no concern of the next twenty years'
// diary, whatever grows.
constexpr double kReach_m = 6.0;

constexpr double kOneInTen = 1.2816; // standard deviations from the middle
constexpr int kHorizon_years = 20;

/// The strips as if kReach_m more were needed, so that every limb above them is named.
Garden askingForMore(const Garden& garden)
{
    Garden wide = garden;
    for (auto& strip : wide.strips)
        strip.headroom_m = headroom::neededHeadroom_m(strip) + kReach_m;
    return wide;
}

/// The limb that comes down into the strip first.
struct First {
    const headroom::LowPart* part{};
    double spare_m{};
    double underside{}; ///< m that it comes down for each metre of shoot
    /// Metres of shoot until it is in the way; infinite if nothing grows on it.
    [[nodiscard]] double shoot_m() const
    {
        if (spare_m <= 0.0)
            return 0.0;
        return underside > 0.0 ? spare_m / underside : std::numeric_limits<double>::infinity();
    }
};

First firstDown(const headroom::StripHeadroom& strip, const Tree& tree, double needed_m)
{
    First first;
    for (const auto& part : strip.blame) {
        const First other{&part, part.height_m - needed_m,
                          undersideShare(tree.limbs[limbIndex(tree, part.limb)])};
        if (!first.part || other.shoot_m() < first.shoot_m())
            first = other;
    }
    return first;
}

std::optional<year_month_day> grownAt(double rate_m, double shoot_m, ShootPattern pattern,
                                      const Place& place, year_month_day from,
                                      const LeafDates& seen)
{
    const double years = shoot_m / rate_m;
    if (years >= kHorizon_years)
        return std::nullopt;
    return year_month_day{grownBy(pattern, place, sys_days{from}, years, seen)};
}

} // namespace

GrownOn grownOn(double shoot_m, const ShootRate& rate, ShootPattern pattern, const Place& place,
                year_month_day from, const LeafDates& seen)
{
    const double slow = std::max(0.1 * rate.mean_m, rate.mean_m - kOneInTen * rate.spread_m);
    const double fast = rate.mean_m + kOneInTen * rate.spread_m;
    return {grownAt(fast, shoot_m, pattern, place, from, seen),
            grownAt(rate.mean_m, shoot_m, pattern, place, from, seen),
            grownAt(slow, shoot_m, pattern, place, from, seen)};
}

std::vector<Regrowth> regrowth(const Garden& garden, const Tree& standing, const Species& species,
                               const ShootRate& rate, year_month_day from)
{
    const auto pattern = species.practice.shootPattern;
    std::vector<Regrowth> all;
    for (const auto& strip : headroom::treeHeadroom(askingForMore(garden), standing)) {
        const double needed = strip.needed_m - kReach_m;
        const auto first = firstDown(strip, standing, needed);
        if (!first.part)
            continue;
        Regrowth one;
        one.strip = strip.strip;
        one.limb = first.part->limb;
        one.height_m = first.part->height_m;
        one.spare_m = first.spare_m;
        const auto lost =
            grownOn(first.shoot_m(), rate, pattern, garden.place, from, standing.leafDates);
        one.early = lost.early;
        one.middle = lost.middle;
        one.late = lost.late;
        constexpr double kTouch_m = 1e-3;
        if (first.spare_m > kTouch_m && first.underside > 0.0)
            one.cutsAYear = first.underside * rate.mean_m / first.spare_m;
        all.push_back(std::move(one));
    }
    return all;
}

} // namespace model::growth
