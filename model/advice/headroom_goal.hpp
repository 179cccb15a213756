#pragma once

#include "model/advice/search.hpp"
#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"

#include <vector>

namespace model::advice {

/// A strip of ground with the headroom wanted over it, in the tree's own frame.
struct HeadroomGoal {
    Polygon outline_m;
    double height_m{};
    bool stemStandsIn{}; ///< the stem's own wood is walked round (headroom::stemStandsIn)
};

/// The strips of a garden as goals for one tree.
[[nodiscard]] std::vector<HeadroomGoal> headroomGoals(const Garden& garden, const Tree& tree);

/// Which rules about single limbs the options must keep; all on unless a rule is being tried
/// without, to learn whether it is the one that binds.
struct LimbRules {
    bool limbShare{true};
};

/// Everything that can be done to a tree's limbs for headroom. A cut is offered only if the part
/// that goes stands in the way of a goal, so no set of cuts holds one that could be left out.
///
/// Offered per limb: leave it (if its own part is clear), lift its shoots (if that clears it),
/// shorten it to a lateral of at least a third of the cut's diameter (and lift what stays), take
/// it off at its union. The trunk is never shortened or taken.
/// \param sagging  the same tree as it hangs at its heaviest (load::sagUnder()): goals are to be
/// met
///        in this state too, and shoots lifted by as much more as their limb sinks. What limbs
///        spring back when cuts take weight off them is not counted on. Null: not looked at.
/// `leafMost`, `woundMost_m2` and `crownAccepts` are left for the caller.
[[nodiscard]] Decisions headroomDecisions(const Tree& tree, const Foliation& foliation,
                                          const std::vector<HeadroomGoal>& goals,
                                          LimbRules rules = {}, const Tree* sagging = nullptr);

} // namespace model::advice
