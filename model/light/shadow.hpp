#pragma once

#include "model/garden/tree.hpp"
#include "model/geometry/curtain.hpp"
#include "model/geometry/polygon.hpp"
#include "model/light/sun.hpp"

#include <chrono>
#include <vector>

namespace model::light {

/// The shadow on level ground at z = 0 of the part of a solid that is above it (L17): convex, with
/// the area of the true outline to 0.1 %. Empty for a solid in the ground.
/// \param towards  unit, towards the sun, pointing up
[[nodiscard]] Polygon shadowOutline(const Curtain& solid, Vec3 towards);

/// A tree's shadow at one instant of a day.
struct ShadowAt {
    Instant when{};
    SunPosition sun;
    Region outline; ///< garden frame
};

/// The shadow's way over a day, every `step` from midnight by the sun, while it is drawn (the sun
/// at 2 degrees and more; daylight.hpp, shadow()).
[[nodiscard]] std::vector<ShadowAt> shadowsOfDay(const Tree& tree, const Place& place,
                                                 std::chrono::year_month_day date,
                                                 std::chrono::minutes step);

} // namespace model::light
