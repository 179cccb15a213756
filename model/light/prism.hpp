#pragma once

#include "model/garden/garden.hpp"
#include "model/geometry/polygon.hpp"

#include <optional>
#include <string>
#include <vector>

namespace model::light {

/// A structure or a hedge as light meets it: upright walls over its outline, a level top.
struct Prism {
    std::string planting;   ///< id, of a hedge: it throws no shadow on itself; empty: a structure
    Polygon outline_m;      ///< garden frame
    double top_m{};         ///< height of its level top, garden frame
    double base_m{};        ///< height of the lowest ground under it, garden frame
    double transmittance{}; ///< share of light let through: 0 for a wall
    Point2 middle_m{};      ///< of a circle on plan around the outline
    double reach_m{};       ///< its radius
};

/// Nothing for what throws no shadow: a pond, or a structure without height.
/// On a slope its height counts from the ground under its middle.
/// Glass lets 0.7 through; assumed, and so are walls without windows (docs/methods/light.md, L16).
[[nodiscard]] std::optional<Prism> prism(const Structure& structure, const Ground& ground = {});

/// A hedge or shrub with a height, which shades the other plantings; nothing for beds and lawns.
/// Opaque (L16).
[[nodiscard]] std::optional<Prism> prism(const Planting& planting, const Ground& ground = {});

/// Share of a ray's light that the structure lets through to `from`; a receiver on top of it
/// sees the whole sky.
/// \param direction  unit, towards the light, pointing up
[[nodiscard]] double transmittance(const Prism& prism, Vec3 from, Vec3 direction);
[[nodiscard]] double transmittance(const std::vector<Prism>& prisms, Vec3 from, Vec3 direction);

} // namespace model::light
