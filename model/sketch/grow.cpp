#include "model/sketch/grow.hpp"

#include "model/geometry/simplify.hpp"
#include "model/sketch/pipe_model.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace model::sketch {
namespace {

// Assumed, all of them: a first guess that the gardener corrects with a tape.
constexpr double kSlenderness = 40.0;      // length over diameter at the union
constexpr double kShareOfParent = 0.6;     // diameter at the union over the parent's there
constexpr double kTipShare = 0.25;         // diameter at the tip over that at the union
constexpr double kLeastDiameter_m = 0.006; // a shoot of a pencil's thickness
constexpr double kLeafFrom = 0.4;          // where leaf starts, share of the length
constexpr double kLeafRadius = 0.25;       // of the leafy body, share of the length
constexpr double kLeastLeafRadius_m = 0.15;
constexpr double kSimplifyShare = 0.04;
constexpr std::size_t kMostStations = 6;
constexpr double kShortest_m = 0.25; // of a limb to start with
constexpr double kLongest_m = 1.0;

/// The stroke laid out flat: along the level through its start, and up.
std::vector<Point2> flattened(std::span<const Vec3> points)
{
    std::vector<Point2> flat;
    const Vec3 start = points.front();
    Vec3 level{};
    for (const auto p : points)
        if (norm(plan(p - start)) > norm(plan(level)))
            level = {p.x - start.x, p.y - start.y, 0.0};
    const double reach = norm(level);
    for (const auto p : points)
        flat.push_back({reach > 0.0 ? dot(p - start, level) / reach : 0.0, p.z});
    return flat;
}

double lineLength_m(std::span<const Vec3> points)
{
    double length = 0.0;
    for (std::size_t i = 1; i < points.size(); ++i)
        length += norm(points[i] - points[i - 1]);
    return length;
}

std::vector<Vec3> fewPoints(std::span<const Vec3> points)
{
    const auto flat = flattened(points);
    double tolerance_m = kSimplifyShare * lineLength_m(points);
    auto kept = simplified(flat, tolerance_m);
    while (kept.size() > kMostStations) {
        tolerance_m *= 1.5;
        kept = simplified(flat, tolerance_m);
    }
    std::vector<Vec3> few;
    for (const auto index : kept)
        few.push_back(points[index]);
    return few;
}

/// The leaf to copy: the parent's, or of the limbs that grow from it the first that has some.
const Foliage* leafLike(const Tree& tree, std::size_t parent)
{
    for (const auto& limb : tree.limbs)
        if (limb.parent == tree.limbs[parent].id && limb.foliage)
            return &*limb.foliage;
    return tree.limbs[parent].foliage ? &*tree.limbs[parent].foliage : nullptr;
}

std::optional<Foliage> firstLeaf(const Tree& tree, std::size_t parent, double length_m)
{
    const auto* like = leafLike(tree, parent);
    if (!like)
        return std::nullopt;
    Foliage leaf;
    leaf.from_m = kLeafFrom * length_m;
    leaf.radius_m = std::min(like->radius_m, std::max(kLeastLeafRadius_m, kLeafRadius * length_m));
    leaf.hanging_m = like->hanging_m;
    leaf.hem_m = like->hem_m;
    leaf.density = like->density;
    return leaf;
}

} // namespace

std::optional<Grip> grip(const Tree& tree, Vec3 at_m, Vec3 lookAlong, double reach_m)
{
    const auto across = [&](Vec3 p) { // what is left of p when seen along the view
        return p - dot(p - at_m, lookAlong) * lookAlong;
    };
    std::optional<Grip> best;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        Limb seen = tree.limbs[i];
        for (auto& station : seen.stations)
            station.position_m = across(station.position_m);
        double passed = 0.0;
        for (std::size_t s = 1; s < seen.stations.size(); ++s) {
            const Vec3 from = seen.stations[s - 1].position_m;
            const Vec3 run = seen.stations[s].position_m - from;
            const double seenLength = norm(run);
            const double t =
                seenLength > 0.0
                    ? std::clamp(dot(at_m - from, run) / (seenLength * seenLength), 0.0, 1.0)
                    : 0.0;
            const auto& limb = tree.limbs[i];
            const auto& a = limb.stations[s - 1];
            const auto& b = limb.stations[s];
            const double length = norm(b.position_m - a.position_m);
            const double radius = (a.diameter_m + t * (b.diameter_m - a.diameter_m)) / 2.0;
            const double distance = std::max(0.0, norm(at_m - (from + t * run)) - radius);
            if (distance <= reach_m && (!best || distance < best->distance_m))
                best =
                    Grip{i, passed + t * length, between(a.position_m, b.position_m, t), distance};
            passed += length;
        }
    }
    return best;
}

Limb limbFromStroke(const Tree& tree, const Grip& from, const Stroke& stroke)
{
    if (stroke.points_m.size() < 2)
        throw std::domain_error("limbFromStroke: a stroke needs two places");
    const Limb& parent = tree.limbs.at(from.limb);
    auto drawn = stroke.points_m;
    drawn.front() = from.position_m;

    Limb limb;
    limb.id = freeLimbId(tree);
    limb.parent = parent.id;
    limb.attachedAt_m = from.at_m;
    limb.measured = Measured::guessed;
    const auto points = fewPoints(drawn);
    const double length = lineLength_m(points);
    const double atUnion_m = std::max(
        kLeastDiameter_m,
        std::min(length / kSlenderness, kShareOfParent * axisPoint(parent, from.at_m).diameter_m));
    const double atTip_m = std::min(atUnion_m, std::max(kLeastDiameter_m, kTipShare * atUnion_m));
    double passed = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (i > 0)
            passed += norm(points[i] - points[i - 1]);
        const double t = length > 0.0 ? passed / length : 0.0;
        limb.stations.push_back({points[i], atUnion_m + t * (atTip_m - atUnion_m)});
    }
    limb.foliage = firstLeaf(tree, from.limb, length);
    return limb;
}

Tree growLimb(const Tree& tree, const Grip& from, const Stroke& stroke)
{
    Tree grown = tree;
    grown.limbs.push_back(limbFromStroke(tree, from, stroke));
    thickenLimbByLeaf(grown, grown.limbs.size() - 1);
    return grown;
}

double firstLength_m(const Tree& tree, const Grip& from)
{
    const Limb& parent = tree.limbs.at(from.limb);
    if (parent.measured == Measured::guessed)
        return kLongest_m; // it is thickened where need be
    const double there_m = axisPoint(parent, from.at_m).diameter_m;
    return std::clamp(kSlenderness * kShareOfParent * there_m, kShortest_m, kLongest_m);
}

std::string freeLimbId(const Tree& tree)
{
    for (std::size_t number = 1;; ++number) {
        auto id = "limb-" + std::to_string(number);
        if (limbIndex(tree, id) == kNoLimb)
            return id;
    }
}

} // namespace model::sketch
