#pragma once

#include "model/garden/cut.hpp"

#include <atomic>
#include <cstddef>
#include <cstdint>
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

/// Per option of Decisions, in one row: those of limb 0, then those of limb 1, and so on.
using PerOption = std::vector<double>;
/// Likewise: whether it may still be taken where its limb is left to be decided.
using Allowed = std::vector<std::uint8_t>;

/// Options of the row that are taken together: one for each limb that is left to be decided.
using Picks = std::vector<std::uint32_t>;

/// Something that options take, and that all together may not take more of.
struct Limit {
    PerOption takes; ///< may be below 0: an option gives room to others
    double most{};
};

/// How far options help at the very most when only some of them are still possible.
struct Reach {
    std::vector<double> asked;    ///< of each goal
    std::vector<PerOption> helps; ///< for each goal
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
    Picks taken;  ///< what was found
    /// Those of Decisions::limits that stood in the way of something.
    std::vector<std::size_t> limiting;
};

/// Told now and then how far a search is: leaf of the best set so far (infinite: none), and the
/// leaf that no set goes below.
using Progress = std::function<void(double best, double bound)>;

/// The choice of cuts as a rooted tree of decisions. Taking an option on a limb leaves the limbs in
/// its `decide` list open; leaf, wounds and help add up.
struct Decisions {
    std::size_t root{};
    std::vector<std::vector<Option>> options; ///< per limb; none: nothing makes this limb fit
    double leafMost{};                        ///< the allowance, share of the tree's leaf
    double woundMost_m2{};
    std::size_t goals{}; ///< that options help with; sets that help less than 1 with one don't do
    std::vector<Limit> limits; ///< sets that are over one don't do
    /// Rules that look at the whole crown, and goals measured on the cut tree; asked only of
    /// complete sets of cuts.
    std::function<bool(const std::vector<Cut>&)> crownAccepts;
    /// What is missing of each thing that is measured on the tree after the cuts, as a share of it,
    /// 0 or less: enough; empty: a rule about the crown forbids them. crownAccepts() is true of
    /// sets that miss nothing. Null: not known.
    std::function<std::vector<double>(const Picks&, const std::vector<Cut>&)> missing;
    /// Looks more closely at what the options help, of sets of cuts that take only allowed options
    /// and no more leaf than this: Option::helps holds for all sets. `likely`: how much of each is
    /// thought to be taken, for a look that is closest there; then what it has nothing new to say
    /// of stays as it is. Empty: not known. Null: nothing more is known.
    std::function<void(const Allowed&, double leafMost, const PerOption& likely, Reach&)>
        lookCloser;
    Choice start;           ///< the best known so far, if `found`: one that crownAccepts has passed
    long nodesMost{20'000}; ///< the search gives up after so many
    long askedMost{2000};   ///< or after asking crownAccepts so often
    long measuresMost{4500}; ///< cut trees measured around each set that is taken, by `missing`
    bool anyWillDo{};        ///< stop at the first set that does, however much leaf it takes
    Progress progress;       ///< may be empty
};

/// Exact branch and bound (docs/methods/advice.md, A1): the bounds never exceed the true least, so
/// no optimum is cut off. Sets whose leaf differs by less than 1e-8 of the tree's for each cut
/// count as equal: then the one with fewer cuts is taken, then the one with less wound. \param
/// cancel  stop early; the best so far is returned, not proven
[[nodiscard]] Choice leastLeaf(const Decisions& decisions,
                               const std::atomic<bool>* cancel = nullptr);

/// Least leaf of each limb with all that grows from it, allowances, goals and crown rules
/// forgotten; infinite where nothing fits.
[[nodiscard]] std::vector<double> relaxedLeaf(const Decisions& decisions);

} // namespace model::advice
