#pragma once

#include "model/garden/cut.hpp"

#include <atomic>
#include <cstddef>
#include <functional>
#include <vector>

namespace model::advice {

/// One way to treat one limb: leave it, lift or thin its shoots, shorten it, or take it off.
struct Option {
    std::vector<Cut> cuts;           ///< none: left as it is
    double leaf{};                   ///< share of the tree's leaf that goes, with all limbs dropped
    double wound_m2{};               ///< section of the cut wood
    std::vector<std::size_t> decide; ///< limbs that stay on it and need a decision of their own
    /// What it does for each of Decisions::goals goals at the very most, 1 being all that the goal
    /// asks; shorter than that or empty: nothing for the others.
    std::vector<double> helps{};
};

/// The least-leaf set of cuts.
struct Choice {
    bool found{};
    std::vector<Cut> cuts;
    double leaf{};
    double wound_m2{};
    bool proven{};  ///< nothing smaller exists (found), or nothing at all does (not found)
    double bound{}; ///< no set that does has less leaf than this; `leaf` when proven
    long nodes{};
    long asked{}; ///< how often crownAccepts was asked
};

/// The choice of cuts as a rooted tree of decisions. Taking an option on a limb leaves the limbs in
/// its `decide` list open; leaf, wounds and help add up.
struct Decisions {
    std::size_t root{};
    std::vector<std::vector<Option>> options; ///< per limb; none: nothing makes this limb fit
    double leafMost{};                        ///< the allowance, share of the tree's leaf
    double woundMost_m2{};
    std::size_t goals{}; ///< that options help with; sets that help less than 1 with one don't do
    /// Rules that look at the whole crown, and goals measured on the cut tree; asked only of
    /// complete sets of cuts.
    std::function<bool(const std::vector<Cut>&)> crownAccepts;
    /// Set by crownAccepts when it has learnt something that would have spared the question: the
    /// search stops, not proven, to be asked anew.
    const std::atomic<bool>* again{};
    Choice start; ///< the best known so far, if `found`: one that crownAccepts has passed
    long nodesMost{4'000'000}; ///< the search gives up after so many
    long askedMost{400};       ///< or after asking crownAccepts so often
};

/// Exact branch and bound. The bounds are the least leaf of the open limbs when the allowances and
/// the crown's rules are forgotten and each goal is paid for at a price, which is worked out once,
/// leaves to root (docs/methods/advice.md, A1: it never exceeds the true least, so no optimum is
/// cut off). Ties go to fewer cuts, then to less wound.
/// \param cancel  stop early; the best so far is returned, not proven
[[nodiscard]] Choice leastLeaf(const Decisions& decisions,
                               const std::atomic<bool>* cancel = nullptr);

/// Least leaf of each limb with all that grows from it, allowances, goals and crown rules
/// forgotten; infinite where nothing fits.
[[nodiscard]] std::vector<double> relaxedLeaf(const Decisions& decisions);

} // namespace model::advice
