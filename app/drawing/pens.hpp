#pragma once

#include <QColor>
#include <QRectF>
#include <QSizeF>
#include <QString>

class QPainter;

namespace app {

[[nodiscard]] QColor withAlpha(QColor colour, double alpha);

/// A colour a share of the way from `a` (0) to `b` (1).
[[nodiscard]] QColor mixed(const QColor& a, const QColor& b, float share);

/// The room a label takes with a little air around it.
[[nodiscard]] QSizeF textSize(const QPainter& painter, const QString& text);

/// A label in its box, on a rounded ground that keeps it legible over whatever lies beneath.
void drawText(QPainter& painter, const QRectF& box, const QString& text, const QColor& ink,
              const QColor& ground);

} // namespace app
