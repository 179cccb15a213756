#include "app/round/round_pick.hpp"

#include <algorithm>

namespace app {
namespace {

using model::Vec3;

/// Where a straight piece from a to b and a look come nearest to each other.
struct Meeting {
    double share{};      ///< of the way from a to b
    double ahead_m{};    ///< along the look
    double distance_m{}; ///< between the two there
};

Meeting meeting(Vec3 a, Vec3 b, const Sight& sight)
{
    const Vec3 run = b - a;
    const Vec3 off = a - sight.from_m;
    const double runRun = dot(run, run);
    const double runLook = dot(run, sight.direction);
    const double across = runRun - runLook * runLook; // of the run, squared; 0: along the look
    double share = 0.0;
    if (across > 1e-12 * runRun)
        share =
            std::clamp((dot(off, sight.direction) * runLook - dot(off, run)) / across, 0.0, 1.0);
    const Vec3 on = off + share * run;
    const double ahead = std::max(0.0, dot(on, sight.direction));
    return {share, ahead, norm(on - ahead * sight.direction)};
}

} // namespace

std::optional<RoundPick> pickWood(const model::Tree& tree, Vec3 foot_m, const Sight& sight,
                                  double reach_m)
{
    std::optional<RoundPick> hit;
    std::optional<RoundPick> near;
    double least = reach_m;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        const auto& stations = tree.limbs[i].stations;
        double passed = 0.0;
        for (std::size_t s = 1; s < stations.size(); ++s) {
            const auto& a = stations[s - 1];
            const auto& b = stations[s];
            const auto met = meeting(foot_m + a.position_m, foot_m + b.position_m, sight);
            const double length = norm(b.position_m - a.position_m);
            const double radius = (a.diameter_m + met.share * (b.diameter_m - a.diameter_m)) / 2.0;
            const double beside = met.distance_m - radius;
            const RoundPick pick{i, passed + met.share * length, met.ahead_m - radius};
            passed += length;
            if (met.ahead_m <= 0.0)
                continue;
            if (beside <= 0.0 && (!hit || pick.distance_m < hit->distance_m))
                hit = pick;
            if (beside <= least) {
                least = beside;
                near = pick;
            }
        }
    }
    return hit ? hit : near;
}

} // namespace app
