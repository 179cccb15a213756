#pragma once

#include "model/geometry/curtain.hpp"

#include <optional>

namespace model {

/// A crown drawn as one body. Convex.
struct Ellipsoid {
    Vec3 middle_m{};
    Vec3 a{}, b{}, c{}; ///< semi-axes, metres, at right angles to each other, none of length 0
    friend bool operator==(const Ellipsoid&, const Ellipsoid&) = default;
};

/// One that stands upright: its level semi-axes along a bearing and across it, and its half height.
[[nodiscard]] Ellipsoid uprightEllipsoid(Vec3 middle_m, double bearing_deg, double along_m,
                                         double across_m, double up_m);

/// Volume, m3: 4/3 pi a b c.
[[nodiscard]] double volume_m3(const Ellipsoid& ellipsoid);

/// Semi-axis of a ball around it, m.
[[nodiscard]] double reach_m(const Ellipsoid& ellipsoid);

/// The part of the ray `from + t * direction`, t >= 0, inside; `direction` is unit. Closed form.
[[nodiscard]] std::optional<Interval> chord(const Ellipsoid& ellipsoid, Vec3 from, Vec3 direction);

/// The ellipse that an ellipsoid fills when it is projected: x S^-1 x = 1 about its middle, with
/// S = Q a aT QT + Q b bT QT + Q c cT QT for the two rows of Q. For a plan Q drops z.
struct PlaneEllipse {
    double xx{}; ///< of S
    double xy{};
    double yy{};
};
/// \param right, up  what a metre along each axis adds to the two coordinates of the projection
[[nodiscard]] PlaneEllipse projected(const Ellipsoid& ellipsoid, Vec3 right, Vec3 up);

/// Area, m2: pi sqrt(det S).
[[nodiscard]] double area_m2(const PlaneEllipse& ellipse);

} // namespace model
