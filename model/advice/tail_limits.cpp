#include "model/advice/tail_limits.hpp"

#include "model/advice/limb_faults.hpp"
#include "model/advice/limits.hpp"

#include <algorithm>

namespace model::advice {
namespace {

constexpr double kRounded = 1e-9; // of the tree's leaf

/// Leaf on a limb and all that grows from it.
struct Leaf {
    double all{};
    double inner{};
};

/// Leaf of single limbs, as shares of the tree's.
class TailRows {
public:
    TailRows(const Tree& tree, const Foliation& foliation, const LimbStates& states)
        : tree_(tree), foliation_(foliation), states_(states), order_(limbOrder(tree)),
          shares_(innerLeafShares(tree, foliation))
    {
        for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
            inner_m_.push_back(innerLength_m(tree.limbs[limb]));
            own_.push_back({});
            for (const auto& form : states.forms()[limb])
                own_.back().push_back(ownLeaf(form, inner_m_.back()));
        }
    }

    TailLimits all() const
    {
        TailLimits all;
        for (std::size_t limb = 0; limb < tree_.limbs.size(); ++limb)
            if (tree_.limbs[limb].parent)
                if (auto limit = of(limb); isAtRisk(limit)) {
                    all.limits.push_back(std::move(limit));
                    all.limbs.push_back(limb);
                }
        return all;
    }

private:
    Leaf ownLeaf(const Limb& form, double inner_m) const
    {
        const auto leaf = ownInnerLeaf(form, inner_m, foliation_);
        const double whole_m2 = std::max(foliation_.leafArea_m2, kRounded);
        return {leaf.all_m2 / whole_m2, leaf.inner_m2 / whole_m2};
    }

    /// What stays of a limb's own leaf.
    Leaf kept(std::size_t limb, const LimbState& state) const
    {
        if (state.form == kGone)
            return {};
        const Leaf& form = own_[limb][state.form];
        return {state.kept * form.all, state.kept * form.inner};
    }

    /// Leaf of a limb as a part of what is on another; nothing if it doesn't grow from that.
    Leaf seenFrom(std::size_t on, std::size_t limb, Leaf leaf) const
    {
        if (limb == on)
            return leaf;
        std::size_t below = limb;
        while (order_.parent[below] != on) {
            below = order_.parent[below];
            if (below == kNoLimb)
                return {};
        }
        const bool inner = tree_.limbs[below].attachedAt_m <= inner_m_[on];
        return {leaf.all, inner ? leaf.all : 0.0};
    }

    /// Of its leaf a share of `least` is to stay on its inner part: what is lacking, least x all -
    /// inner, may not grow above 0.
    Limit of(std::size_t limb) const
    {
        const double least = std::min(kInnerLeafLeast, shares_[limb]);
        const auto lacking = [&](std::size_t on, const LimbState& state) {
            const Leaf leaf = seenFrom(limb, on, kept(on, state));
            return least * leaf.all - leaf.inner;
        };
        Limit limit;
        for (const auto beyond : limbAndBeyond(order_, limb))
            limit.most -= lacking(beyond, {});
        limit.most = std::max(0.0, limit.most) + kRounded;
        for (std::size_t o = 0; o < states_.options(); ++o) {
            double takes = 0.0;
            for (const auto& change : states_.changes(o))
                takes += lacking(change.limb, change.state) - lacking(change.limb, {});
            limit.takes.push_back(takes);
        }
        return limit;
    }

    /// True if any option by itself may come to matter.
    static bool isAtRisk(const Limit& limit)
    {
        double worst = 0.0;
        for (const double takes : limit.takes)
            worst += std::max(0.0, takes);
        return worst > limit.most;
    }

    const Tree& tree_;
    const Foliation& foliation_;
    const LimbStates& states_;
    LimbOrder order_;
    std::vector<double> shares_;
    std::vector<double> inner_m_;
    std::vector<std::vector<Leaf>> own_; ///< per limb and form
};

} // namespace

TailLimits tailLimits(const Tree& tree, const Foliation& foliation, const LimbStates& states)
{
    return TailRows(tree, foliation, states).all();
}

} // namespace model::advice
