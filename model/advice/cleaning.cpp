#include "model/advice/cleaning.hpp"

#include "model/advice/limits.hpp"

#include <algorithm>

namespace model::advice {
namespace {

constexpr double kTip_m = 1e-3; // a mark at the very tip has nothing beyond it

bool hasToGo(DefectKind kind)
{
    return kind == DefectKind::dead || kind == DefectKind::broken || kind == DefectKind::rubbing;
}

class Cleaner {
public:
    Cleaner(const Tree& tree, const std::vector<std::string>& keep)
        : tree_(tree), order_(limbOrder(tree)), from_m_(faultyFrom_m(tree)),
          leafy_(tree.limbs.size()), stays_(tree.limbs.size()), holdsKept_(tree.limbs.size())
    {
        for (auto limb = order_.rootFirst.rbegin(); limb != order_.rootFirst.rend(); ++limb)
            lookAt(*limb, keep);
    }

    std::vector<Cut> cuts() const
    {
        std::vector<Cut> all;
        std::vector<char> seen(tree_.limbs.size()); // decided with another
        for (const auto limb : order_.rootFirst) {
            if (limb == order_.trunk || !from_m_[limb] || seen[limb] != 0)
                continue;
            const auto at_m = cutAt_m(limb);
            Cut cut;
            cut.kind = at_m ? CutKind::reduction : CutKind::removal;
            cut.limb = tree_.limbs[limb].id;
            cut.at_m = at_m.value_or(0.0);
            if (!takesKept(limb, cut.at_m))
                all.push_back(std::move(cut));
            for (const auto gone : limbAndBeyond(order_, limb))
                if (gone == limb || goesWith(limb, gone, at_m.value_or(0.0)))
                    seen[gone] = 1;
        }
        return all;
    }

private:
    void lookAt(std::size_t limb, const std::vector<std::string>& keep)
    {
        const auto& drawn = tree_.limbs[limb];
        const double lives_m = from_m_[limb].value_or(length_m(drawn));
        stays_[limb] = std::ranges::find(keep, drawn.id) != keep.end() ? 1 : 0;
        holdsKept_[limb] = stays_[limb];
        leafy_[limb] = drawn.foliage && drawn.foliage->from_m < lives_m ? 1 : 0;
        for (const auto child : order_.children[limb]) {
            holdsKept_[limb] = holdsKept_[limb] != 0 || holdsKept_[child] != 0 ? 1 : 0;
            if (tree_.limbs[child].attachedAt_m <= lives_m && leafy_[child] != 0)
                leafy_[limb] = 1;
        }
    }

    /// True if a limb goes when another that it grows from is cut at a place.
    bool goesWith(std::size_t cut, std::size_t limb, double at_m) const
    {
        for (auto up = limb; order_.parent[up] != kNoLimb; up = order_.parent[up])
            if (order_.parent[up] == cut)
                return at_m <= 0.0 || tree_.limbs[up].attachedAt_m > at_m + kTip_m;
        return false;
    }

    bool takesKept(std::size_t limb, double at_m) const
    {
        return stays_[limb] != 0 ||
               std::ranges::any_of(order_.children[limb], [&](std::size_t child) {
                   return holdsKept_[child] != 0 && goesWith(limb, child, at_m);
               });
    }

    bool onlyDead(std::size_t limb) const
    {
        return std::ranges::none_of(tree_.limbs[limb].defects, [&](const Defect& d) {
            return d.kind != DefectKind::dead && hasToGo(d.kind) && d.at_m <= *from_m_[limb];
        });
    }

    /// Where it is shortened; blank: all of it goes.
    std::optional<double> cutAt_m(std::size_t limb) const
    {
        const double from_m = *from_m_[limb];
        if (from_m <= kTip_m || leafy_[limb] == 0)
            return std::nullopt;
        if (onlyDead(limb)) // only dead tissue is cut, whatever grows there
            return from_m;
        std::optional<double> best;
        for (const auto child : order_.children[limb]) {
            const auto& lateral = tree_.limbs[child];
            const double at_m = lateral.attachedAt_m;
            const bool takesOver = lateral.stations.front().diameter_m >=
                                   kLateralLeast * axisPoint(tree_.limbs[limb], at_m).diameter_m;
            if (at_m > kTip_m && at_m <= from_m && takesOver && leafy_[child] != 0)
                best = std::max(best.value_or(at_m), at_m);
        }
        return best;
    }

    const Tree& tree_;
    LimbOrder order_;
    std::vector<std::optional<double>> from_m_;
    std::vector<char> leafy_;     ///< per limb: it, or what grows from it, has living leaf
    std::vector<char> stays_;     ///< per limb: it is to stay
    std::vector<char> holdsKept_; ///< per limb: it, or what grows from it, is to stay
};

} // namespace

std::vector<std::optional<double>> faultyFrom_m(const Tree& tree)
{
    const auto order = limbOrder(tree);
    std::vector<std::optional<double>> from(tree.limbs.size());
    for (const auto limb : order.rootFirst) {
        for (const auto& defect : tree.limbs[limb].defects)
            if (hasToGo(defect.kind) && defect.at_m < length_m(tree.limbs[limb]) - kTip_m)
                from[limb] = std::min(from[limb].value_or(defect.at_m), defect.at_m);
        const auto parent = order.parent[limb];
        if (parent != kNoLimb && from[parent] && *from[parent] <= tree.limbs[limb].attachedAt_m)
            from[limb] = 0.0;
    }
    return from;
}

std::optional<DefectKind> faultOf(const Limb& limb)
{
    const Defect* first = nullptr;
    for (const auto& defect : limb.defects)
        if (hasToGo(defect.kind) && (!first || defect.at_m < first->at_m))
            first = &defect;
    return first ? std::optional(first->kind) : std::nullopt;
}

std::vector<Cut> cleaningCuts(const Tree& tree, const std::vector<std::string>& keep)
{
    return Cleaner(tree, keep).cuts();
}

} // namespace model::advice
