#include "model/advice/work_order.hpp"

#include <algorithm>

namespace model::advice {
namespace {

bool takesWood(const Cut& cut)
{
    return cut.kind == CutKind::removal || cut.kind == CutKind::reduction;
}

bool growsFrom(const LimbOrder& order, std::size_t limb, std::size_t from)
{
    for (auto up = order.parent[limb]; up != kNoLimb; up = order.parent[up])
        if (up == from)
            return true;
    return false;
}

/// One cut, and what decides when its turn comes.
struct Turn {
    Cut cut;
    std::size_t limb{};
    double height_m{};
};

/// Of the cuts on one limb: shortened, then its shoots seen to, then off if it is to go after all.
int rank(CutKind kind)
{
    return kind == CutKind::reduction ? 0 : kind == CutKind::removal ? 2 : 1;
}

bool mustComeBefore(const LimbOrder& order, const Turn& a, const Turn& b)
{
    if (a.limb == b.limb)
        return rank(a.cut.kind) < rank(b.cut.kind);
    return growsFrom(order, a.limb, b.limb) && takesWood(b.cut);
}

bool isBetterNext(const Turn& a, const Turn& b)
{
    const bool aLifts = a.cut.kind == CutKind::lifting;
    const bool bLifts = b.cut.kind == CutKind::lifting;
    return aLifts != bLifts ? aLifts : a.height_m > b.height_m;
}

} // namespace

std::vector<Cut> inWorkingOrder(const Tree& tree, std::vector<Cut> cuts)
{
    const auto order = limbOrder(tree);
    std::vector<Turn> waiting;
    for (auto& cut : cuts) {
        const auto limb = limbIndex(tree, cut.limb);
        const double height_m = axisPoint(tree.limbs.at(limb), cut.at_m).position_m.z;
        waiting.push_back({std::move(cut), limb, height_m});
    }
    cuts.clear();
    while (!waiting.empty()) {
        auto next = waiting.end();
        for (auto turn = waiting.begin(); turn != waiting.end(); ++turn) {
            const bool mayCome = std::ranges::none_of(
                waiting, [&](const Turn& other) { return mustComeBefore(order, other, *turn); });
            if (mayCome && (next == waiting.end() || isBetterNext(*turn, *next)))
                next = turn;
        }
        // What must come before what is an order: there is always one that waits for none.
        // cppcheck-suppress derefInvalidIterator
        cuts.push_back(std::move(next->cut));
        waiting.erase(next);
    }
    return cuts;
}

} // namespace model::advice
