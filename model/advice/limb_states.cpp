#include "model/advice/limb_states.hpp"

#include "model/advice/limb_part.hpp"
#include "model/advice/prune.hpp"

#include <algorithm>

namespace model::advice {
namespace {

constexpr double kStaysHere_m = 1e-6; // what stands here stays (afterCut())

} // namespace

LimbStates::LimbStates(const Tree& tree, const Foliation& foliation, const Decisions& decisions)
    : foliation_(foliation), tree_(tree), order_(limbOrder(tree)),
      leaf_(tree.limbs.size()), first_{0}
{
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
        forms_.push_back({});
        (void)formOf(limb, tree.limbs[limb]);
    }
    for (std::size_t limb = 0; limb < decisions.options.size(); ++limb) {
        for (const auto& option : decisions.options[limb]) {
            changes_.push_back(changesOf(option, limb));
            decides_.push_back(option.decide);
        }
        first_.push_back(changes_.size());
    }
}

std::size_t LimbStates::formOf(std::size_t limb, const Limb& shape)
{
    auto& forms = forms_[limb];
    const auto known = std::ranges::find(forms, shape);
    if (known != forms.end())
        return static_cast<std::size_t>(known - forms.begin());
    if (forms.size() == kGone) { // hardly any has so many
        knowsAllForms_ = false;
        return kGone; // as if it were gone, which promises too much, never less
    }
    forms.push_back(shape);
    const double leaf_m2 = ownLeaf_m2(shape, foliation_);
    leaf_[limb].push_back(foliation_.leafArea_m2 > 0.0 ? leaf_m2 / foliation_.leafArea_m2 : 0.0);
    return forms.size() - 1;
}

std::vector<LimbStates::Change> LimbStates::changesOf(const Option& option, std::size_t limb)
{
    Tree alone;
    alone.limbs = {tree_.limbs[limb]};
    alone.limbs.front().parent.reset();
    std::vector<Change> changes;
    LimbState own;
    const auto takeBeyond = [&](std::size_t child) {
        for (const auto gone : limbAndBeyond(order_, child))
            changes.push_back({gone, {kGone, 0.0, leaf_[gone].front()}});
    };
    for (const auto& cut : option.cuts) {
        if (cut.kind == CutKind::removal) {
            takeBeyond(limb);
            return changes;
        }
        if (cut.kind == CutKind::thinning || cut.kind == CutKind::renewal)
            own.kept *= 1.0 - cut.share.value_or(0.0);
        else
            alone = afterCut(alone, cut);
        if (cut.kind == CutKind::reduction)
            for (const auto child : order_.children[limb])
                if (tree_.limbs[child].attachedAt_m > cut.at_m + kStaysHere_m)
                    takeBeyond(child);
    }
    alone.limbs.front().parent = tree_.limbs[limb].parent;
    own.form = formOf(limb, alone.limbs.front());
    if (own.form == kGone)
        own.kept = 0.0;
    const double left = own.form == kGone ? 0.0 : own.kept * leaf_[limb][own.form];
    own.lost = leaf_[limb].front() - left;
    changes.push_back({limb, own});
    return changes;
}

std::optional<std::vector<LimbState>> LimbStates::after(const Picks& picks) const
{
    if (!knowsAllForms_)
        return std::nullopt;
    std::vector<LimbState> states(tree_.limbs.size());
    for (const auto pick : picks)
        for (const auto& change : changes_[pick])
            states[change.limb] = change.state;
    return states;
}

std::vector<double> LimbStates::shareLost(const PerOption& taken) const
{
    if (taken.empty())
        return {};
    std::vector<double> lost(tree_.limbs.size(), 0.0);
    for (std::size_t o = 0; o < taken.size(); ++o)
        for (const auto& change : changes_[o])
            if (const double whole = leaf_[change.limb].front(); whole > 0.0)
                lost[change.limb] += taken[o] * change.state.lost / whole;
    return lost;
}

std::vector<std::vector<LimbState>> LimbStates::possible(const Allowed& allowed) const
{
    struct May {
        bool goes{};
        bool staysWhole{}; ///< with nothing of its own to be decided
        bool decides{};
    };
    const std::size_t count = tree_.limbs.size();
    std::vector<May> may(count);
    std::vector<std::vector<LimbState>> states(count);
    may[order_.trunk].decides = true;
    for (const auto limb : order_.rootFirst) {
        const auto& children = order_.children[limb];
        if (may[limb].goes)
            for (const auto child : children)
                may[child].goes = true;
        if (may[limb].staysWhole) {
            states[limb].push_back({});
            for (const auto child : children)
                may[child].staysWhole = true;
        }
        for (std::size_t o = first_[limb]; may[limb].decides && o < first_[limb + 1]; ++o) {
            if (allowed[o] == 0)
                continue;
            for (const auto child : children) {
                if (std::ranges::find(decides_[o], child) != decides_[o].end())
                    may[child].decides = true;
                else if (std::ranges::find(changes_[o], child, &Change::limb) != changes_[o].end())
                    may[child].goes = true;
                else
                    may[child].staysWhole = true;
            }
            const auto& own = *std::ranges::find(changes_[o], limb, &Change::limb);
            if (own.state.form == kGone)
                may[limb].goes = true;
            else
                states[limb].push_back(own.state);
        }
        if (may[limb].goes)
            states[limb].push_back({kGone, 0.0, leaf_[limb].front()});
    }
    return states;
}

} // namespace model::advice
