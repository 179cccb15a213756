#pragma once

#include <QRectF>
#include <QSizeF>

#include <initializer_list>
#include <optional>
#include <vector>

namespace app {

/// Where on a drawing there is still room for a label.
class LabelRoom {
public:
    explicit LabelRoom(QSizeF canvas) : canvas_(QPointF(0, 0), canvas) {}

    /// Marks a piece of the drawing as taken.
    void take(const QRectF& box) { taken_.push_back(box); }

    /// The first of the places that is inside the canvas and free; takes it. Nothing if none is.
    std::optional<QRectF> placeIfFree(std::initializer_list<QRectF> choices);

    /// The first of the places that is inside the canvas and free, else the first of all; takes it.
    QRectF place(std::initializer_list<QRectF> choices);

    [[nodiscard]] bool isFree(const QRectF& box) const;

private:
    QRectF canvas_;
    std::vector<QRectF> taken_;
};

/// A label's box beside a point: to its right, left, above or below, `gap` pixels off.
[[nodiscard]] QRectF rightOf(QPointF at, QSizeF size, double gap);
[[nodiscard]] QRectF leftOf(QPointF at, QSizeF size, double gap);
[[nodiscard]] QRectF above(QPointF at, QSizeF size, double gap);
[[nodiscard]] QRectF below(QPointF at, QSizeF size, double gap);

} // namespace app
