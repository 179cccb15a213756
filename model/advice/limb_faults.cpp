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
constexpr double kSameLength_m = 1e-6;

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
    return std::ranges::any_of(
        limb.defects, [](const Defect& d) { return d.kind == DefectKind::dead && d.at_m <= 0.0; });
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

/// Leaf of a limb and of all that grows from it, in some unit.
double leafFrom(const Tree& tree, const Foliation& foliation, const LimbOrder& order,
                std::size_t limb)
{
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    double sum = 0.0;
    for (const auto i : limbAndBeyond(order, limb))
        sum += areas[i];
    return sum;
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

double innerLeafShare(const Tree& tree, const Foliation& foliation, std::size_t limb)
{
    const auto order = limbOrder(tree);
    const double inner_m = 2.0 / 3.0 * length_m(tree.limbs[limb]);
    double inner = 0.0;
    double all = 0.0;
    for (const auto& body : leafyBodies(tree)) {
        if (body.limb != limb)
            continue;
        const double leaf = leafArea_m2(body, foliation);
        const double length = body.to_m - body.from_m;
        all += leaf;
        inner +=
            leaf * (length > 0.0 ? std::clamp((inner_m - body.from_m) / length, 0.0, 1.0) : 1.0);
    }
    for (const auto child : order.children[limb]) {
        const double leaf = leafFrom(tree, foliation, order, child);
        all += leaf;
        inner += tree.limbs[child].attachedAt_m <= inner_m ? leaf : 0.0;
    }
    return all > 0.0 ? inner / all : 1.0;
}

std::vector<Finding> limbFaults(const Tree& before, const Tree& after, const Foliation& foliation)
{
    std::vector<Finding> faults;
    for (const auto& pair : rubbingLimbs(after))
        faults.push_back({Rule::rubbingLimbs, Severity::inform, after.limbs[pair.thinner].id,
                          std::max(0.0, pair.gap_m), kRubbing_m});
    for (std::size_t limb = 0; limb < after.limbs.size(); ++limb) {
        const auto& stands = after.limbs[limb];
        const auto was = limbIndex(before, stands.id);
        if (!stands.parent || was == kNoLimb ||
            length_m(before.limbs[was]) > length_m(stands) + kSameLength_m)
            continue; // the stem has a rule of its own; a shortened limb is another limb
        const double share = innerLeafShare(after, foliation, limb);
        if (share < kInnerLeafLeast && share < innerLeafShare(before, foliation, was) - 1e-9)
            faults.push_back({Rule::lionTail, Severity::warn, stands.id, share, kInnerLeafLeast});
    }
    return faults;
}

} // namespace model::advice
