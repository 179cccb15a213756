#include "model/document/check.hpp"

#include "model/garden/tree.hpp"

#include <algorithm>
#include <map>

namespace model {
namespace {

constexpr double kOffAxis_m = 0.05; // a union lies within the parent's bark, drawn by hand
constexpr double kThicker = 1.02;   // tapes and eyes differ
constexpr double kAlongSlack_m = 0.01;
constexpr double kBaseOff_m = 0.05;

/// The limbs of one tree, looked up by id, with what was found good so far.
struct Limbs {
    const std::vector<Limb>& limbs;
    std::map<std::string, std::size_t> byId;
    std::vector<bool> good;

    [[nodiscard]] std::size_t parentOf(std::size_t i) const
    {
        if (!limbs[i].parent)
            return kNoLimb;
        const auto found = byId.find(*limbs[i].parent);
        return found == byId.end() ? kNoLimb : found->second;
    }
};

void checkTrunk(Check& check, const Path& path, const Limb& trunk, bool goodAxis)
{
    if (trunk.attachedAt_m != 0.0)
        check.fault(path / "attached_at_m", plain(trunk.attachedAt_m),
                    "0: the trunk grows from no limb; is its parent missing?");
    if (!goodAxis)
        return;
    const Path stations = path / "stations";
    const Path station = stations / 0;
    const auto& base = trunk.stations.front();
    const double aside = norm(plan(base.position_m));
    if (base.position_m.z > kBaseOff_m || aside > base.diameter_m / 2.0 + kBaseOff_m)
        check.fault(station / "position_m",
                    "a trunk that starts " + rounded(base.position_m.z) + " m above and " +
                        rounded(aside) + " m beside the tree's base",
                    "the trunk's first station at the base, [0, 0, 0]");
}

void checkUnion(Check& check, const Path& path, const Limb& limb, const Limb& parent)
{
    const double length = length_m(parent);
    if (!check.within(path / "attached_at_m", limb.attachedAt_m, 0.0, length + kAlongSlack_m,
                      "metres along the limb it grows from,"))
        return;
    const auto there = axisPoint(parent, limb.attachedAt_m);
    const auto& base = limb.stations.front();
    const double off = norm(base.position_m - there.position_m);
    const double allowed = there.diameter_m / 2.0 + kOffAxis_m;
    const Path stations = path / "stations";
    const Path station = stations / 0;
    if (off > allowed)
        check.fault(station / "position_m",
                    "a union " + rounded(off) + " m from the middle of " + inQuotes(parent.id) +
                        " at " + rounded(limb.attachedAt_m) + " m along it",
                    "one inside that limb, within " + rounded(allowed) + " m of its middle");
    if (base.diameter_m > kThicker * there.diameter_m)
        check.fault(station / "diameter_m", plain(base.diameter_m),
                    "a limb no thicker at its union than " + inQuotes(parent.id) + ", which is " +
                        rounded(there.diameter_m) + " m there");
}

/// Limbs that don't grow from the trunk in the end go round in a circle; the first is told.
bool checkCircle(Check& check, const Path& path, const Limbs& all)
{
    for (std::size_t i = 0; i < all.limbs.size(); ++i) {
        std::string round = inQuotes(all.limbs[i].id);
        std::size_t up = all.parentOf(i);
        for (std::size_t steps = 0; up != kNoLimb && up != i && steps < all.limbs.size(); ++steps) {
            round += " from " + inQuotes(all.limbs[up].id);
            up = all.parentOf(up);
        }
        const Path limb = path / i;
        if (up == i)
            return check.fault(limb / "parent", round + " from " + inQuotes(all.limbs[i].id),
                               "limbs that grow from the trunk, not from each other in a circle");
    }
    return true;
}

/// One trunk, and every other limb grows from it in the end.
bool checkParents(Check& check, const Path& path, const Limbs& all)
{
    bool good = true;
    std::size_t trunk = kNoLimb;
    for (std::size_t i = 0; i < all.limbs.size(); ++i) {
        const auto& parent = all.limbs[i].parent;
        const Path limb = path / i;
        if (parent && all.parentOf(i) == kNoLimb)
            good = check.fault(limb / "parent", inQuotes(*parent), "the id of a limb of this tree");
        else if (!parent && trunk != kNoLimb)
            good = check.fault(limb / "parent", "nothing",
                               "the id of the limb it grows from: the trunk is " +
                                   inQuotes(all.limbs[trunk].id) + " already");
        else if (!parent)
            trunk = i;
    }
    if (trunk == kNoLimb)
        good =
            check.fault(path, "no limb without a parent", "one trunk: the limb that has no parent");
    return checkCircle(check, path, all) && good;
}

} // namespace

void checkLimbs(Check& check, const Path& path, const std::vector<Limb>& limbs)
{
    if (limbs.empty()) {
        check.fault(path, "no limbs", "at least the trunk");
        return;
    }
    if (!check.atMost(path, limbs.size(), limits::kLimbs, "limbs"))
        return;
    Limbs all{limbs, {}, {}};
    std::set<std::string> ids;
    for (std::size_t i = 0; i < limbs.size(); ++i) {
        const Path limb = path / i;
        check.id(limb / "id", limbs[i].id, ids);
        all.byId.emplace(limbs[i].id, i);
        all.good.push_back(checkLimb(check, limb, limbs[i]));
    }
    if (!checkParents(check, path, all))
        return;
    for (std::size_t i = 0; i < limbs.size(); ++i) {
        const Path limb = path / i;
        const std::size_t parent = all.parentOf(i);
        if (parent == kNoLimb)
            checkTrunk(check, limb, limbs[i], all.good[i]);
        else if (all.good[i] && all.good[parent])
            checkUnion(check, limb, limbs[i], limbs[parent]);
    }
}

} // namespace model
