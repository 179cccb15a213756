#pragma once

#include "model/species/species.hpp"

namespace model::load {

/// Drag coefficient of a crown in leaf on its still-air outline, gaps included, at the gust at
/// its own height (L4). Falls with speed because leaves and twigs give way; outside 8-32 m/s, the
/// range of the tests behind it, it keeps its last value.
[[nodiscard]] double crownDragCoefficient(DragGroup group, double gust_m_s);

/// Drag of a leafless crown over that of the same crown in leaf (L5); 1 for an evergreen.
[[nodiscard]] double leaflessShare(LeafHabit habit);

/// Drag coefficient of bare wood square to the wind: a rough round bar (L6).
inline constexpr double kBareWoodDrag = 1.0;

/// Dynamic pressure, Pa (L7).
[[nodiscard]] constexpr double dynamicPressure_Pa(double airDensity_kg_m3, double speed_m_s)
{
    return 0.5 * airDensity_kg_m3 * speed_m_s * speed_m_s;
}

} // namespace model::load
