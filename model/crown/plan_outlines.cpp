#include "model/crown/plan_outlines.hpp"

#include <cmath>

namespace model {
namespace {

constexpr double kStraight_m = 1e-9;

/// True if `next` goes on where `sofar` ends, in the same direction on plan.
bool goesOn(const LeafyBody& sofar, const LeafyBody& next)
{
    const auto& a = sofar.solid;
    const auto& b = next.solid;
    if (sofar.limb != next.limb || a.radius_m != b.radius_m || norm(plan(a.b - b.a)) > kStraight_m)
        return false;
    const Point2 before = plan(a.b - a.a);
    const Point2 after = plan(b.b - b.a);
    const double off = before.x * after.y - before.y * after.x;
    const double along = before.x * after.x + before.y * after.y;
    return along >= 0.0 && std::abs(off) <= kStraight_m * (norm(before) + norm(after));
}

} // namespace

std::vector<Polygon> planOutlines(const std::vector<LeafyBody>& bodies)
{
    std::vector<Polygon> outlines;
    for (std::size_t i = 0; i < bodies.size();) {
        LeafyBody run = bodies[i++];
        for (; i < bodies.size() && goesOn(run, bodies[i]); ++i)
            run.solid.b = bodies[i].solid.b;
        outlines.push_back(footprint(run.solid));
    }
    return outlines;
}

} // namespace model
