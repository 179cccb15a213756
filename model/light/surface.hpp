#pragma once

#include "model/garden/garden.hpp"
#include "model/geometry/vec3.hpp"

#include <optional>
#include <vector>

namespace model::light {

/// A flat part of a planting that takes light: a bed, a lawn, a hedge's top, or one of its faces.
struct Surface {
    std::string planting;             ///< id
    std::optional<double> facing_deg; ///< compass bearing that a face looks to; blank: level
    Vec3 normal{0.0, 0.0, 1.0};       ///< unit
    Vec3 groundNormal{0.0, 0.0, 1.0}; ///< unit, of the ground that it stands on
    std::vector<Vec3> points_m;       ///< garden frame, spread evenly
};

/// Cosine of the angle at which light from a direction falls on the surface; 0 from behind it and
/// from under the ground.
[[nodiscard]] double facing(const Surface& surface, Vec3 towards);

/// The planting's surface along the ground: the ground of a bed or lawn, the top of a hedge or
/// shrub. Level, or as steep as the ground.
[[nodiscard]] Surface levelSurface(const Planting& planting, const Ground& ground = {});

/// The upright faces of a hedge, one for each compass point (N, NE, E...) that its outline looks
/// to; none for other plantings and for hedges without height. Points lie at a quarter and at three
/// quarters of the height.
[[nodiscard]] std::vector<Surface> faces(const Planting& planting, const Ground& ground = {});

/// A level surface for drawing: points in rows from south to north, each from west to east.
struct MapGrid {
    Point2 first_m{}; ///< the south-western point
    double spacing_m{};
    std::size_t columns{};
    std::size_t rows{};
    Surface surface; ///< point (row, column) at row * columns + column
};

/// Points `spacing_m` apart that cover the rectangle from `low` to `high`, at a height
/// above the ground.
/// \throws std::domain_error  unless low lies south-west of high and spacing_m > 0
[[nodiscard]] MapGrid mapGrid(Point2 low, Point2 high, double spacing_m, double height_m = 0.0,
                              const Ground& ground = {});

} // namespace model::light
