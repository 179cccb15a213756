#include "app/drawing/pens.hpp"

#include <QPainter>

namespace app {

QColor withAlpha(QColor colour, double alpha)
{
    colour.setAlphaF(static_cast<float>(alpha));
    return colour;
}

QColor mixed(const QColor& a, const QColor& b, float share)
{
    const auto between = [share](float x, float y) { return x + share * (y - x); };
    return QColor::fromRgbF(between(a.redF(), b.redF()), between(a.greenF(), b.greenF()),
                            between(a.blueF(), b.blueF()));
}

QSizeF textSize(const QPainter& painter, const QString& text)
{
    const QFontMetricsF metrics(painter.font());
    return {metrics.horizontalAdvance(text) + 8.0, metrics.height() + 2.0};
}

void drawText(QPainter& painter, const QRectF& box, const QString& text, const QColor& ink,
              const QColor& ground)
{
    if (ground.alpha() > 0) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(ground);
        painter.drawRoundedRect(box, 4.0, 4.0);
    }
    painter.setPen(ink);
    painter.drawText(box, Qt::AlignCenter, text);
}

} // namespace app
