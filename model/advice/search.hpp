#pragma once

#include "model/garden/cut.hpp"

#include <atomic>
#include <cstddef>
#include <functional>
#include <vector>

namespace model::advice {

/// One way to treat one limb: leave it, lift its shoots, shorten it, or take it off.
struct Option {
    std::vector<Cut> cuts;           ///< none: left as it is
    double leaf{};                   ///< share of the tree's leaf that goes, with all limbs dropped
    double wound_m2{};               ///< section of the cut wood
    std::vector<std::size_t> decide; ///< limbs that stay on it and need a decision of their own
};

/// The choice of cuts as a rooted tree of decisions. Taking an option on a limb leaves the limbs in
/// its `decide` list open; leaf and wounds add up.
struct Decisions {
    std::size_t root{};
    std::vector<std::vector<Option>> options; ///< per limb; none: nothing makes this limb fit
    double leafMost{};                        ///< the allowance, share of the tree's leaf
    double woundMost_m2{};
    /// Rules that look at the whole crown; asked only of complete sets of cuts.
    std::function<bool(const std::vector<Cut>&)> crownAccepts;
};

/// The least-leaf set of cuts.
struct Choice {
    bool found{};
    std::vector<Cut> cuts;
    double leaf{};
    bool proven{}; ///< nothing smaller exists (found), or nothing at all does (not found)
    long nodes{};
};

/// Exact branch and bound. The bound is the least leaf of the open limbs when the allowances and
/// the crown's rules are forgotten, which is worked out once, leaves to root
/// (docs/methods/advice.md, A1: it never exceeds the true least, so no optimum is cut off).
/// Ties go to fewer cuts, then to less wound.
/// \param cancel  stop early; the best so far is returned, not proven
[[nodiscard]] Choice leastLeaf(const Decisions& decisions,
                               const std::atomic<bool>* cancel = nullptr);

/// Least leaf of each limb with all that grows from it, allowances and crown rules forgotten;
/// infinite where nothing fits. The bound of leastLeaf.
[[nodiscard]] std::vector<double> relaxedLeaf(const Decisions& decisions);

} // namespace model::advice
