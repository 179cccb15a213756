#pragma once

#include "model/garden/garden.hpp"
#include "model/geometry/polygon.hpp"
#include "model/light/sun.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace model::light {

/// What lies in the shadow of trees and neighbours: all that is in one of the parts, which may
/// overlap. Outer rings go round one way and holes the other, so that a fill by winding number
/// covers it. None at night.
using Shadows = std::vector<std::shared_ptr<const Region>>;

/// Shadows in a garden that is drawn on again and again: a limb that stays where it was under the
/// same sun keeps its shadow. Whatever came before, the shadows are those of the garden as it now
/// is, to the last digit.
class ShadowStudy {
public:
    [[nodiscard]] Shadows redraw(const Garden& garden, const SunPosition& sun);

private:
    struct KnownLimb {
        Limb limb;
        Point2 tree_m{};
        std::shared_ptr<const Region> shadow;
    };
    struct KnownNeighbour {
        Neighbour neighbour;
        std::shared_ptr<const Region> shadow;
    };
    SunPosition sun_;
    std::optional<Slope> slope_;
    std::vector<KnownLimb> limbs_;
    std::vector<KnownNeighbour> neighbours_;
};

} // namespace model::light
