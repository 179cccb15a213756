#pragma once

#include "model/advice/headroom_goal.hpp"
#include "model/advice/search.hpp"

#include <functional>
#include <vector>

namespace model::advice {

/// What a cut takes of one limb's own wood and leaf, without what grows from it.
struct Taken {
    std::size_t limb{};
    double from_m{};   ///< all beyond this place along the limb
    double share{1.0}; ///< of it; under 1: of its small shoots only, the wood stays
};

/// A goal that is measured on the whole tree: at most how much of it, 1 being all, each taking
/// helps. Additive: what two cuts do together is never more than the sum (docs/methods/advice.md,
/// A6).
using Help = std::function<std::vector<double>(const Taken&)>;

/// How a limb's own shoots may be cut, evenly along it: thinned, or, of a fruit tree, renewed.
struct ShootCuts {
    CutKind kind{CutKind::thinning};
    std::vector<double> steps{0.10, 0.15, 0.20, 0.25}; ///< rising shares of its own shoots
};

/// What is wanted of a tree.
struct Wanted {
    std::vector<HeadroomGoal> headroom;
    const Tree* sagging{};  ///< the tree as it hangs at its heaviest; null: not looked at
    std::vector<bool> keep; ///< per limb: neither shortened nor thinned nor taken; empty: none
    std::vector<bool> lose; ///< per limb: goes; empty: none
    /// Per limb: its end may be cut back though that serves nothing, so that leaf may go from its
    /// inner part; empty: none.
    std::vector<bool> ends;
    std::size_t goals{}; ///< that `help` speaks of
    Help help;           ///< empty if there are no such goals
    bool thin{true};     ///< offer cuts of a limb's small shoots, where they help
    ShootCuts shoots;    ///< which
};

/// Which rules about single limbs the options must keep; all on unless a rule is being tried
/// without, to learn whether it is the one that binds.
struct LimbRules {
    bool limbShare{true};
};

/// A share that takes every shoot of a limb and leaves its wood: what lifting its hanging shoots
/// does to a goal is never more than this does.
inline constexpr double kAllShoots = 1.0 - 1e-9;

/// Everything that can be done to a tree's limbs for what is wanted. A cut is offered only if the
/// part that goes stands in the way of a strip, helps a goal, is faulty or is to go, or is the end
/// of a limb whose ends may be cut back (the end itself, side branches on its outer third, their
/// shoots).
///
/// Offered per limb: leave it (if its own part is clear), lift its shoots (if that clears it), thin
/// or renew them, shorten it to a lateral of at least a third of the cut's diameter (and lift or
/// thin what stays), take it off at its union. The trunk is never shortened or taken. `leafMost`,
/// `woundMost_m2` and `crownAccepts` are left for the caller.
[[nodiscard]] Decisions options(const Tree& tree, const Foliation& foliation, const Wanted& wanted,
                                LimbRules rules = {});

} // namespace model::advice
