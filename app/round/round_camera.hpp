#pragma once

#include "model/garden/tree.hpp"

#include <QPointF>
#include <QSizeF>

#include <optional>

namespace app {

/// A straight look from the eye. Garden frame.
struct Sight {
    model::Vec3 from_m{};
    model::Vec3 direction{}; ///< length one
};

/// A gardener who walks round one place and looks at it, from the ground or from above, near
/// enough for distance to foreshorten. Garden frame, pixels with y down.
struct RoundCamera {
    double bearing_deg{};    ///< the way the gardener looks, clockwise from north
    double down_deg{15.0};   ///< how far the look points below the level, -90 < .. < 90
    double distance_m{20.0}; ///< from the eye to the place looked at, > 0
    model::Vec3 target_m{};
    QSizeF canvas{800.0, 500.0};

    /// From the lower edge of the canvas to the upper one. Assumed: about that of a short camera
    /// lens, so that a crown looks neither flat nor bulging.
    static constexpr double kFieldOfView_deg = 36.0;

    [[nodiscard]] model::Vec3 look() const;  ///< length one
    [[nodiscard]] model::Vec3 right() const; ///< level, length one
    [[nodiscard]] model::Vec3 up() const;    ///< of the picture, length one
    [[nodiscard]] model::Vec3 eye_m() const;
    /// Through a point of the canvas.
    [[nodiscard]] Sight sight(QPointF point) const;
    /// Where a place is drawn; nothing if it does not lie before the eye.
    [[nodiscard]] std::optional<QPointF> toCanvas(model::Vec3 place_m) const;
    /// What a pixel measures at the distance of the place looked at, m.
    [[nodiscard]] double metresPerPixel() const;
};

/// The camera that has all of a ball in the picture, whichever way it turns.
/// \pre  canvas is not empty
[[nodiscard]] RoundCamera fitted(RoundCamera camera, model::Vec3 middle_m, double radius_m);

} // namespace app
