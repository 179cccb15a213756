#include "model/advice/limb_faults.hpp"

#include "model/advice/limits.hpp"
#include "model/geometry/segment.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace model::advice {
namespace {

constexpr double kLook_m = 0.2; // wood is looked at in lengths of this
constexpr double kFork_m = 0.5; // so near to their fork limbs are one
constexpr double kRounded = 1e-9;

/// A length of wood.
struct Length {
    double along_m{}; ///< its middle, from the limb's union
    Vec3 from_m{};
    Vec3 to_m{};
    double radius_m{};
};

std::vector<Length> lengths(const Limb& limb)
{
    const double whole_m = length_m(limb);
    const int count = std::max(1, static_cast<int>(std::ceil(whole_m / kLook_m)));
    std::vector<Length> all;
    for (int i = 0; i < count; ++i) {
        const auto a = axisPoint(limb, whole_m * i / count);
        const auto b = axisPoint(limb, whole_m * (i + 1) / count);
        all.push_back({whole_m * (i + 0.5) / count, a.position_m, b.position_m,
                       (a.diameter_m + b.diameter_m) / 4.0});
    }
    return all;
}

bool isDead(const Limb& limb)
{
    return std::ranges::any_of(limb.defects, [](const Defect& d) {
        return (d.kind == DefectKind::dead || d.kind == DefectKind::broken) && d.at_m <= 0.0;
    });
}

/// True if two lengths belong to one fork.
bool forks(const Limb& a, const Length& onA, const Limb& b, const Length& onB)
{
    if (a.parent == b.id)
        return onA.along_m < kFork_m;
    if (b.parent == a.id)
        return onB.along_m < kFork_m;
    return a.parent == b.parent && onA.along_m < kFork_m && onB.along_m < kFork_m;
}

double thickness_m(const Limb& limb)
{
    return limb.stations.front().diameter_m;
}

std::vector<double> innerLengths_m(const Tree& tree)
{
    std::vector<double> all;
    for (const auto& limb : tree.limbs)
        all.push_back(innerLength_m(limb));
    return all;
}

/// innerLeafShares() where this much of each limb is its inner part.
std::vector<double> innerLeafShares(const Tree& tree, const Foliation& foliation,
                                    const std::vector<double>& inner_m)
{
    const auto order = limbOrder(tree);
    std::vector<double> inner(tree.limbs.size());
    std::vector<double> all(tree.limbs.size());
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
        const auto own = ownInnerLeaf(tree.limbs[limb], inner_m[limb], foliation);
        all[limb] = own.all_m2;
        inner[limb] = own.inner_m2;
    }
    for (auto limb = order.rootFirst.rbegin(); limb != order.rootFirst.rend(); ++limb) {
        const auto parent = order.parent[*limb];
        if (parent == kNoLimb)
            continue;
        all[parent] += all[*limb];
        if (tree.limbs[*limb].attachedAt_m <= inner_m[parent])
            inner[parent] += all[*limb];
    }
    std::vector<double> shares;
    for (std::size_t i = 0; i < all.size(); ++i)
        shares.push_back(all[i] > 0.0 ? inner[i] / all[i] : 1.0);
    return shares;
}

} // namespace

std::vector<Rubbing> rubbingLimbs(const Tree& tree)
{
    std::vector<std::vector<Length>> wood;
    for (const auto& limb : tree.limbs)
        wood.push_back(isDead(limb) ? std::vector<Length>() : lengths(limb));
    std::vector<Rubbing> all;
    for (std::size_t a = 0; a < wood.size(); ++a)
        for (std::size_t b = a + 1; b < wood.size(); ++b) {
            double least = kRubbing_m;
            for (const auto& onA : wood[a])
                for (const auto& onB : wood[b])
                    if (!forks(tree.limbs[a], onA, tree.limbs[b], onB))
                        least = std::min(
                            least, segmentDistance_m(onA.from_m, onA.to_m, onB.from_m, onB.to_m) -
                                       onA.radius_m - onB.radius_m);
            if (least >= kRubbing_m)
                continue;
            const bool first = thickness_m(tree.limbs[a]) < thickness_m(tree.limbs[b]);
            all.push_back({first ? a : b, first ? b : a, least});
        }
    return all;
}

double innerLength_m(const Limb& limb)
{
    return 2.0 / 3.0 * length_m(limb);
}

OwnLeaf ownInnerLeaf(const Limb& limb, double inner_m, const Foliation& foliation)
{
    Limb bare = limb;
    if (bare.foliage)
        bare.foliage->hanging_m = 0.0; // lifted to a level hem, which strips no limb
    std::vector<LeafyBody> bodies;
    appendLeafyBodies(bare, 0, bodies);
    OwnLeaf own;
    for (const auto& body : bodies) {
        const double leaf = leafArea_m2(body, foliation);
        const double length = body.to_m - body.from_m;
        const double along = inner_m - body.from_m;
        own.all_m2 += leaf;
        own.inner_m2 += leaf * (length > 0.0 ? std::clamp(along / length, 0.0, 1.0) : 1.0);
    }
    return own;
}

std::vector<double> innerLeafShares(const Tree& tree, const Foliation& foliation)
{
    return innerLeafShares(tree, foliation, innerLengths_m(tree));
}

std::vector<Finding> lionTails(const Tree& before, const std::vector<double>& shares,
                               const Tree& after, const Foliation& foliation)
{
    std::vector<std::size_t> was;
    std::vector<double> inner_m;
    for (const auto& limb : after.limbs) {
        was.push_back(limbIndex(before, limb.id));
        inner_m.push_back(innerLength_m(was.back() != kNoLimb ? before.limbs[was.back()] : limb));
    }
    const auto then = innerLeafShares(after, foliation, inner_m);
    std::vector<Finding> tails;
    for (std::size_t limb = 0; limb < after.limbs.size(); ++limb) {
        const auto& stands = after.limbs[limb];
        if (then[limb] >= kInnerLeafLeast || !stands.parent)
            continue; // the stem has a rule of its own
        if (was[limb] != kNoLimb && then[limb] < shares[was[limb]] - kRounded)
            tails.push_back(
                {Rule::lionTail, Severity::block, stands.id, then[limb], kInnerLeafLeast});
    }
    return tails;
}

std::vector<Finding> rubbingNotes(const Tree& tree)
{
    std::vector<Finding> notes;
    for (const auto& pair : rubbingLimbs(tree))
        notes.push_back({Rule::rubbingLimbs, Severity::inform, tree.limbs[pair.thinner].id,
                         std::max(0.0, pair.gap_m), kRubbing_m});
    return notes;
}

} // namespace model::advice
