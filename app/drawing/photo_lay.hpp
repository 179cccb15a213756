#pragma once

#include "app/drawing/side_frame.hpp"
#include "model/garden/photo.hpp"

#include <QSizeF>
#include <QTransform>

#include <optional>

/// How a photo lies under the side view. Points of a picture are in its pixels, from its upper left
/// corner; those of the straightened picture from its middle (model::Underlay). Formulas K5-K7 of
/// docs/methods/sketch.md.
namespace app {

/// Focal length of a camera nobody has told of, in pixels of a picture of that size: 28 mm over a
/// 36 x 24 mm picture, as the main cameras of telephones have. Assumed.
[[nodiscard]] double focal_px(QSizeF picture);

/// Carries a picture's pixels to the straightened picture's: turned, then as a level camera would
/// have seen it (K5).
[[nodiscard]] QTransform straightening(const model::Underlay& lay, QSizeF picture);

/// Carries a picture's pixels to the canvas. \pre  photo.underlay and photo.metresPerPixel are
/// there
[[nodiscard]] QTransform photoToCanvas(const model::Photo& photo, QSizeF picture,
                                       const SideFrame& frame);

/// The same lay turned or tilted otherwise, its foot on the same pixel of the picture.
[[nodiscard]] model::Underlay keepingFoot(const model::Underlay& from, model::Underlay to,
                                          QSizeF picture);

/// The lay that makes an edge upright which is so in truth: by the camera's tilt, or, where the
/// edge is so near the picture's middle that tilt hardly leans it, by turning (K6).
/// \param a, b  pixels of the picture, of two points of the edge
/// \returns blank if they are one point, or would ask for a tilt beyond 60 degrees
[[nodiscard]] std::optional<model::Underlay> uprightBy(const model::Underlay& lay, QPointF a,
                                                       QPointF b, QSizeF picture);

/// Metres for one pixel of the straightened picture, by two points that are `length_m` apart (K7).
/// \returns blank if they are one point
[[nodiscard]] std::optional<double> scaleBy(const model::Underlay& lay, QPointF a, QPointF b,
                                            double length_m, QSizeF picture);

} // namespace app
