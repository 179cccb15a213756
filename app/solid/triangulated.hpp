#pragma once

#include "model/geometry/polygon.hpp"

#include <array>
#include <vector>

namespace app {

/// The corners of an outline without fault, counter-clockwise as seen from above.
[[nodiscard]] model::Polygon counterClockwise(model::Polygon outline);

/// Triangles, as numbers of corners, that fill a counter-clockwise outline without fault: one ear
/// after another is cut off (a simple polygon has two at least: Meisters, G. H. (1975): Polygons
/// have ears. American Mathematical Monthly 82, 648-651; recalled).
[[nodiscard]] std::vector<std::array<std::size_t, 3>> triangulated(const model::Polygon& outline);

} // namespace app
