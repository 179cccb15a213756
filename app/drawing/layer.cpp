#include "app/drawing/layer.hpp"

#include <QPaintEngine>
#include <QPainter>

#include <cmath>

namespace app {

bool takesLayers(const QPainter& painter)
{
    return painter.paintEngine() && painter.paintEngine()->type() == QPaintEngine::Raster &&
           painter.deviceTransform().type() <= QTransform::TxScale;
}

double pixelScale(const QPainter& painter)
{
    return painter.deviceTransform().m11();
}

Layer layer(const QRectF& bounds, double scale, const std::function<void(QPainter&)>& paint)
{
    const QRect pixels = QRectF(bounds.topLeft() * scale, bounds.size() * scale).toAlignedRect();
    if (pixels.isEmpty())
        return {};
    Layer made{QImage(pixels.size(), QImage::Format_ARGB32_Premultiplied),
               QPointF(pixels.topLeft()) / scale};
    made.image.fill(Qt::transparent);
    {
        QPainter painter(&made.image);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.translate(-pixels.topLeft());
        painter.scale(scale, scale);
        paint(painter);
    }
    made.image.setDevicePixelRatio(scale);
    return made;
}

void drawLayer(QPainter& painter, const Layer& layer)
{
    if (!layer.image.isNull())
        painter.drawImage(layer.at, layer.image);
}

void drawTogether(QPainter& painter, const QPainterPath& shapes, const QPen& outline,
                  const QBrush& fill, const QRectF& within)
{
    if (!takesLayers(painter)) {
        painter.setPen(outline);
        painter.setBrush(fill);
        painter.drawPath(shapes.simplified());
        return;
    }
    const double wide = outline.widthF();
    const auto bounds = shapes.boundingRect().adjusted(-wide, -wide, wide, wide) & within;
    drawLayer(painter, layer(bounds, pixelScale(painter), [&](QPainter& on) {
                  // Outlines of all, twice as wide, then all insides taken out again.
                  QPen twice = outline;
                  twice.setWidthF(2.0 * wide);
                  on.setPen(twice);
                  on.drawPath(shapes);
                  on.setPen(Qt::NoPen);
                  on.setBrush(Qt::black);
                  on.setCompositionMode(QPainter::CompositionMode_Clear);
                  on.drawPath(shapes);
                  on.setCompositionMode(QPainter::CompositionMode_SourceOver);
                  on.setBrush(fill);
                  on.drawPath(shapes);
              }));
}

} // namespace app
