#include "model/garden/limb.hpp"

#include <algorithm>
#include <limits>

namespace model {

double length_m(const Limb& limb)
{
    double length = 0.0;
    for (std::size_t i = 1; i < limb.stations.size(); ++i)
        length += norm(limb.stations[i].position_m - limb.stations[i - 1].position_m);
    return length;
}

AxisPoint axisPoint(const Limb& limb, double at_m)
{
    double passed = 0.0;
    AxisPoint last{};
    for (std::size_t i = 1; i < limb.stations.size(); ++i) {
        const auto& from = limb.stations[i - 1];
        const auto& to = limb.stations[i];
        const Vec3 run = to.position_m - from.position_m;
        const double length = norm(run);
        if (length <= 0.0)
            continue;
        const double t = std::clamp((at_m - passed) / length, 0.0, 1.0);
        last = {between(from.position_m, to.position_m, t),
                from.diameter_m + t * (to.diameter_m - from.diameter_m), (1.0 / length) * run};
        passed += length;
        if (at_m <= passed)
            break;
    }
    return last;
}

double nearestAlong_m(const Limb& limb, Vec3 position_m)
{
    double passed = 0.0;
    double best = 0.0;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i < limb.stations.size(); ++i) {
        const Vec3 from = limb.stations[i - 1].position_m;
        const Vec3 run = limb.stations[i].position_m - from;
        const double length = norm(run);
        if (length <= 0.0)
            continue;
        const double t = std::clamp(dot(position_m - from, run) / (length * length), 0.0, 1.0);
        const double off = norm(position_m - (from + t * run));
        if (off < least) {
            least = off;
            best = passed + t * length;
        }
        passed += length;
    }
    return best;
}

std::vector<Station> stretch(const Limb& limb, double from_m, double to_m)
{
    const auto stationAt = [&limb](double at) {
        const auto point = axisPoint(limb, at);
        return Station{point.position_m, point.diameter_m};
    };
    std::vector<Station> part{stationAt(from_m)};
    double passed = 0.0;
    for (std::size_t i = 1; i + 1 < limb.stations.size(); ++i) {
        passed += norm(limb.stations[i].position_m - limb.stations[i - 1].position_m);
        if (passed > from_m && passed < to_m)
            part.push_back(limb.stations[i]);
    }
    part.push_back(stationAt(to_m));
    return part;
}

} // namespace model
