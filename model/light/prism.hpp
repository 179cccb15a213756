#pragma once

#include "model/garden/garden.hpp"
#include "model/geometry/polygon.hpp"

#include <optional>
#include <vector>

namespace model::light {

/// A structure as light meets it: upright walls over its outline, a level top.
struct Prism {
    Polygon outline_m;      ///< garden frame
    double height_m{};      ///< > 0
    double transmittance{}; ///< share of light let through: 0 for a wall
    Point2 middle_m{};      ///< of a circle on plan around the outline
    double reach_m{};       ///< its radius
};

/// Nothing for what throws no shadow: a pond, or a structure without height.
/// Glass lets 0.7 through; assumed, and so are walls without windows (docs/methods/light.md, L16).
[[nodiscard]] std::optional<Prism> prism(const Structure& structure);

/// Share of a ray's light that the structure lets through to `from`; a receiver on top of it
/// sees the whole sky.
/// \param direction  unit, towards the light, pointing up
[[nodiscard]] double transmittance(const Prism& prism, Vec3 from, Vec3 direction);
[[nodiscard]] double transmittance(const std::vector<Prism>& prisms, Vec3 from, Vec3 direction);

} // namespace model::light
