#include "model/advice/crown_shape.hpp"

#include "model/advice/limits.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace model::advice {
namespace {

double fromFoot_m(Point2 p)
{
    return std::hypot(p.x, p.y);
}

/// A mean of places on plan.
class Middle {
public:
    void add(Vec3 a, Vec3 b, double weight)
    {
        x_ += weight * 0.5 * (a.x + b.x);
        y_ += weight * 0.5 * (a.y + b.y);
        weight_ += weight;
    }
    [[nodiscard]] Point2 from(Vec3 foot) const
    {
        return weight_ > 0.0 ? Point2{x_ / weight_ - foot.x, y_ / weight_ - foot.y} : Point2{};
    }

private:
    double x_{};
    double y_{};
    double weight_{};
};

Point2 leafAside_m(const std::vector<LeafyBody>& bodies, const Foliation& foliation)
{
    Middle middle;
    for (const auto& body : bodies)
        middle.add(body.solid.a, body.solid.b, leafArea_m2(body, foliation));
    return middle.from({});
}

Point2 woodAside_m(const Tree& tree)
{
    Middle middle;
    for (const auto& limb : tree.limbs)
        for (std::size_t i = 1; limb.parent && i < limb.stations.size(); ++i) {
            const auto& a = limb.stations[i - 1];
            const auto& b = limb.stations[i];
            const double section = a.diameter_m * a.diameter_m + a.diameter_m * b.diameter_m +
                                   b.diameter_m * b.diameter_m;
            middle.add(a.position_m, b.position_m, section * norm(b.position_m - a.position_m));
        }
    return middle.from({});
}

double reach_m(const std::vector<LeafyBody>& bodies)
{
    constexpr int kDirections = 8;
    double sum = 0.0;
    for (int i = 0; i < kDirections; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / kDirections;
        const Vec3 out{std::cos(angle), std::sin(angle), 0.0};
        double most = 0.0;
        for (const auto& body : bodies)
            most = std::max({most, dot(body.solid.a, out) + body.solid.radius_m,
                             dot(body.solid.b, out) + body.solid.radius_m});
        sum += most / kDirections;
    }
    return sum;
}

} // namespace

CrownShape crownShape(const Tree& tree, const Foliation& foliation)
{
    const auto bodies = leafyBodies(tree);
    if (bodies.empty())
        return {};
    CrownShape shape;
    shape.base_m = std::numeric_limits<double>::infinity();
    for (const auto& body : bodies)
        shape.base_m = std::min(shape.base_m, lowestPoint(body.solid).z);
    shape.top_m = height_m(tree);
    shape.liveCrownRatio = (shape.top_m - shape.base_m) / shape.top_m;
    const double line_m = shape.base_m + 2.0 / 3.0 * (shape.top_m - shape.base_m);
    double below = 0.0;
    double all = 0.0;
    for (const auto& body : bodies) {
        const double low = lowestPoint(body.solid).z;
        const double high = std::max(body.solid.a.z, body.solid.b.z) + body.solid.radius_m;
        const double leaf = leafArea_m2(body, foliation);
        below += leaf * std::clamp((line_m - low) / (high - low), 0.0, 1.0);
        all += leaf;
    }
    shape.lowerTwoThirdsLeaf = all > 0.0 ? below / all : 0.0;
    shape.leafAside_m = leafAside_m(bodies, foliation);
    shape.woodAside_m = woodAside_m(tree);
    shape.reach_m = reach_m(bodies);
    return shape;
}

double movedAside(const CrownShape& before, const CrownShape& after)
{
    const auto further = [&](Point2 CrownShape::*aside) {
        return fromFoot_m(after.*aside) - fromFoot_m(before.*aside);
    };
    return before.reach_m > 0.0
               ? std::max(further(&CrownShape::leafAside_m), further(&CrownShape::woodAside_m)) /
                     before.reach_m
               : 0.0;
}

std::vector<Finding> crownNotes(const CrownShape& before, const CrownShape& after, double share)
{
    std::vector<Finding> notes;
    if (share > kOrdinaryShare)
        notes.push_back({Rule::ordinaryShare, Severity::inform, {}, share, kOrdinaryShare});
    const double raised = (after.base_m - before.base_m) / (before.top_m - before.base_m);
    if (raised > kRaiseStep)
        notes.push_back({Rule::raiseStep, Severity::warn, {}, raised, kRaiseStep});
    if (const double moved = movedAside(before, after); moved > kMovedAside)
        notes.push_back({Rule::balance, Severity::warn, {}, moved, kMovedAside});
    if (after.liveCrownRatio < kLiveCrownRatioGood)
        notes.push_back(
            {Rule::liveCrownRatio, Severity::warn, {}, after.liveCrownRatio, kLiveCrownRatioGood});
    return notes;
}

} // namespace model::advice
