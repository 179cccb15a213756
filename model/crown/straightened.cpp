#include "model/crown/straightened.hpp"

#include <algorithm>
#include <cmath>

namespace model {
namespace {

/// How far a limb's axis may stray from the straight pieces that stand for it, over the radius of
/// its leafy body.
constexpr double kStray = 0.1;

/// Keeps the points of a path that matter at this tolerance (Douglas and Peucker's way).
void keepBends(const std::vector<Curtain>& chain, std::size_t first, std::size_t last,
               double tolerance_m, std::vector<std::size_t>& kept)
{
    const Vec3 from = chain[first].a;
    const Vec3 run = chain[last - 1].b - from;
    const double square = dot(run, run);
    double most = tolerance_m;
    std::size_t bend = 0;
    for (std::size_t i = first + 1; i < last; ++i) {
        const Vec3 off = chain[i].a - from;
        const double t = square > 0.0 ? std::clamp(dot(off, run) / square, 0.0, 1.0) : 0.0;
        const double stray = norm(off - t * run);
        if (stray > most) {
            most = stray;
            bend = i;
        }
    }
    if (bend == 0) {
        kept.push_back(last);
        return;
    }
    keepBends(chain, first, bend, tolerance_m, kept);
    keepBends(chain, bend, last, tolerance_m, kept);
}

} // namespace

std::vector<Curtain> straightened(const std::vector<Curtain>& chain)
{
    std::vector<Curtain> few;
    std::size_t first = 0;
    while (first < chain.size()) {
        std::size_t last = first + 1;
        const double tolerance = kStray * chain[first].radius_m;
        while (last < chain.size() &&
               std::abs(chain[last].radius_m - chain[first].radius_m) <= tolerance &&
               std::abs(chain[last].hang_m - chain[first].hang_m) <= tolerance)
            ++last;
        std::vector<std::size_t> kept;
        keepBends(chain, first, last, tolerance, kept);
        for (const auto end : kept) {
            few.push_back(
                {chain[first].a, chain[end - 1].b, chain[first].radius_m, chain[first].hang_m});
            first = end;
        }
    }
    return few;
}

std::vector<Curtain> bareWood(const Limb& limb)
{
    const double bare = limb.foliage ? limb.foliage->from_m : length_m(limb);
    std::vector<Curtain> wood;
    if (bare <= 0.0)
        return wood;
    const auto axis = stretch(limb, 0.0, bare);
    for (std::size_t s = 1; s < axis.size(); ++s)
        wood.push_back({axis[s - 1].position_m, axis[s].position_m,
                        (axis[s - 1].diameter_m + axis[s].diameter_m) / 4.0, 0.0});
    return wood;
}

} // namespace model
