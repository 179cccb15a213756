#pragma once

#include <QBrush>
#include <QImage>
#include <QPainterPath>
#include <QPen>
#include <QPointF>
#include <QRectF>

#include <functional>

class QPainter;

namespace app {

/// A part of a drawing as pixels, to be laid over another.
struct Layer {
    QImage image; ///< null: nothing
    QPointF at;   ///< its upper left corner
};

/// Whether layers can be laid on what the painter paints: pixels that are not turned. Paper isn't.
[[nodiscard]] bool takesLayers(const QPainter& painter);

/// Pixels of the device for each of the painter's units.
[[nodiscard]] double pixelScale(const QPainter& painter);

/// \param bounds  of all that `paint` covers \param scale  pixels for each unit
[[nodiscard]] Layer layer(const QRectF& bounds, double scale,
                          const std::function<void(QPainter&)>& paint);

void drawLayer(QPainter& painter, const Layer& layer);

/// Fills what overlapping shapes cover together and draws the outline of that, without reckoning
/// it where pixels do. \param within  nothing outside is drawn
void drawTogether(QPainter& painter, const QPainterPath& shapes, const QPen& outline,
                  const QBrush& fill, const QRectF& within);

} // namespace app
