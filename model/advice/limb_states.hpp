#pragma once

#include "model/advice/search.hpp"
#include "model/crown/foliage.hpp"
#include "model/garden/tree.hpp"

#include <cstdint>
#include <optional>
#include <vector>

namespace model::advice {

/// What may become of one limb: one of its forms, its shoots thinned or not; or nothing is left.
struct LimbState {
    std::size_t form{}; ///< kGone: off with something that it grows from, or by itself
    double kept{1.0};   ///< share of the shoots of that form that stays
    double lost{};      ///< of its own leaf, as a share of the tree's
};
inline constexpr std::size_t kGone = 63;

/// Per limb, the shapes that it can have while it stands: first as it is, then shortened, lifted;
/// never thinned.
using LimbForms = std::vector<std::vector<Limb>>;

/// What the options of a search make of every limb, its own wood and leaf alone.
class LimbStates {
public:
    LimbStates(const Tree& tree, const Foliation& foliation, const Decisions& decisions);

    [[nodiscard]] const LimbForms& forms() const { return forms_; }

    /// What becomes of each limb if these are taken; blank where that is not known, as of a limb
    /// that could have more forms than are kept.
    [[nodiscard]] std::optional<std::vector<LimbState>> after(const Picks& picks) const;

    /// The states that are possible for each limb if only allowed options are taken.
    [[nodiscard]] std::vector<std::vector<LimbState>> possible(const Allowed& allowed) const;

    /// Limbs that an option, taken on its limb, changes, and into what.
    struct Change {
        std::size_t limb{};
        LimbState state;
    };
    [[nodiscard]] const std::vector<Change>& changes(std::size_t option) const
    {
        return changes_[option];
    }
    /// Per limb: the share of its own leaf that goes where so much of each option is taken; empty
    /// if nothing is said of them.
    [[nodiscard]] std::vector<double> shareLost(const PerOption& taken) const;
    [[nodiscard]] std::size_t options() const { return changes_.size(); }

private:
    [[nodiscard]] std::vector<Change> changesOf(const Option& option, std::size_t limb);
    std::size_t formOf(std::size_t limb, const Limb& shape);

    const Foliation& foliation_;
    const Tree& tree_;
    LimbOrder order_;
    LimbForms forms_;
    std::vector<std::vector<double>> leaf_; ///< of each, share of the tree's
    std::vector<std::size_t> first_;        ///< option, per limb, and the end
    std::vector<std::vector<Change>> changes_;
    std::vector<std::vector<std::size_t>> decides_; ///< per option
    bool knowsAllForms_{true};
};

} // namespace model::advice
