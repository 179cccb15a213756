#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"

#include <optional>
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

/// A limb by itself, as it was drawn and, where that is looked at, as it hangs at its heaviest
/// (load::sagUnder()): goals are to be met in both states.
struct Hanging {
    Limb drawn;
    std::optional<Limb> heavy;
};

/// A stretch of it.
[[nodiscard]] Hanging hangingPart(const Hanging& limb, double from_m, double to_m);

/// True if any of the limb's own wood or leaf is too low over a goal's strip.
[[nodiscard]] bool blocksAny(const Hanging& limb, const std::vector<HeadroomGoal>& goals);

/// How a limb can stay under the goals: as it is, or with its shoots lifted, by as much more as the
/// limb sinks. What limbs spring back when cuts take weight off them is not counted on.
struct Stay {
    std::optional<double> lift_m; ///< blank: as it is
    double leaf_m2{};             ///< that stays on it
};

/// Nothing if neither helps: then it can't stay.
[[nodiscard]] std::optional<Stay> howToStay(const Hanging& limb, const Foliation& foliation,
                                            const std::vector<HeadroomGoal>& goals);

/// The garden with so much more headroom asked for over every strip.
[[nodiscard]] Garden withSpare(const Garden& garden, double spare_m);

} // namespace model::advice
