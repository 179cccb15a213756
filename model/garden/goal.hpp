#pragma once

#include "model/garden/extras.hpp"

#include <optional>
#include <string>
#include <vector>

namespace model {

/// What the gardener wants of a tree, besides the headroom that each strip of ground asks for.
enum class GoalKind {
    relief,     ///< limbs that bear the design gust
    gust,       ///< limbs that bear a gust of their own
    light,      ///< hours of direct sun on a planting
    dli,        ///< light for growth on a planting, direct and from the sky
    keep,       ///< a limb that stays as it is
    lose,       ///< a limb that goes
    leaf,       ///< no more than this share of the leaf taken
    openCentre, ///< fruit trees: the middle of the crown free of upright limbs
};

/// Whether the job must reach a goal, or gives it up if it can't be had with the rest.
enum class Want { must, wish };

struct Goal {
    GoalKind kind{};
    Want want{Want::must};
    /// id: relief, gust, keep, lose: a limb; light, dli: a planting. Relief and gust without: all
    std::string subject;
    /// relief: utilisation at the design gust, at most (blank: 1, where a limb is expected to
    /// fail); gust: m/s, 3-second gust at 10 m over open ground, at least (never blank); light:
    /// effective sun hours a day, mean of the months (blank: what the plant needs); dli: daily
    /// light integral, mol/m2, likewise; leaf: share of the leaf, at most.
    std::optional<double> value;
    std::vector<int> months; ///< light, dli: 1..12; none: the growing season
    Extras extras;
    friend bool operator==(const Goal&, const Goal&) = default;
};

} // namespace model
