#pragma once

#include "model/geometry/polygon.hpp"
#include "model/geometry/vec3.hpp"

#include <array>
#include <optional>

namespace model {

/// The shape of everything leafy: all points within `radius_m` of the upright parallelogram that
/// a piece of limb from `a` to `b` sweeps when it is let down by `hang_m`. Without hanging shoots
/// it is a capsule, with `a == b` a sphere. It is convex, which every function here relies on.
struct Curtain {
    Vec3 a{};
    Vec3 b{};
    double radius_m{}; ///< > 0
    double hang_m{};   ///< >= 0
    friend bool operator==(const Curtain&, const Curtain&) = default;
};

/// A stretch along a line, in the line's own unit.
struct Interval {
    double from{};
    double to{};
};

/// The corners of the swept parallelogram: a, b, and both let down.
[[nodiscard]] std::array<Vec3, 4> corners(const Curtain& curtain);

/// Volume, m3: 2 r A + pi/2 r^2 P + 4/3 pi r^3 for a plane convex shape of area A and
/// perimeter P thickened by r (Steiner's formula, closed form).
[[nodiscard]] double volume_m3(const Curtain& curtain);

/// Centre of volume, m.
[[nodiscard]] Vec3 centre(const Curtain& curtain);

/// Height of the underside over a point of the ground plan, m; nothing where the curtain does
/// not lie above or below that point. Closed form.
[[nodiscard]] std::optional<double> undersideHeight_m(const Curtain& curtain, Point2 at);

/// The lowest point, m.
[[nodiscard]] Vec3 lowestPoint(const Curtain& curtain);

/// The outline on the ground plan, as a polygon whose round parts have `cornerSteps` edges per
/// quarter turn. It has the true area, and its corners lie a little outside the true outline.
[[nodiscard]] Polygon footprint(const Curtain& curtain, int cornerSteps = 6);

/// The part of the ray `from + t * direction`, t >= 0, inside the curtain; `direction` has
/// length one, so t is in metres. Nothing when the ray misses. Closed form.
[[nodiscard]] std::optional<Interval> chord(const Curtain& curtain, Vec3 from, Vec3 direction);

/// Area of the outline as seen along a level direction (the wind's), m2. Closed form.
[[nodiscard]] double frontalArea_m2(const Curtain& curtain, Vec3 levelDirection);

} // namespace model
