#pragma once

#include "model/garden/limb.hpp"

#include <string>
#include <utility>

namespace model::advice {

/// A straight bare limb that grows from its parent's axis and tapers to half.
inline Limb limbFrom(std::string id, const Limb& parent, double at_m, Vec3 run_m,
                     double thickness_m)
{
    Limb limb;
    limb.id = std::move(id);
    limb.parent = parent.id;
    limb.attachedAt_m = at_m;
    const Vec3 from = axisPoint(parent, at_m).position_m;
    limb.stations = {{from, thickness_m, {}}, {from + run_m, thickness_m / 2.0, {}}};
    return limb;
}

} // namespace model::advice
