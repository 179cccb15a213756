#include "app/drawing/label_room.hpp"

#include <algorithm>

namespace app {

bool LabelRoom::isFree(const QRectF& box) const
{
    return canvas_.contains(box) &&
           std::ranges::none_of(taken_, [&](const QRectF& other) { return other.intersects(box); });
}

std::optional<QRectF> LabelRoom::placeIfFree(std::initializer_list<QRectF> choices)
{
    const auto free =
        std::ranges::find_if(choices, [this](const QRectF& box) { return isFree(box); });
    if (free == choices.end())
        return std::nullopt;
    take(*free);
    return *free;
}

QRectF LabelRoom::place(std::initializer_list<QRectF> choices)
{
    if (const auto free = placeIfFree(choices))
        return *free;
    take(*choices.begin());
    return *choices.begin();
}

QRectF rightOf(QPointF at, QSizeF size, double gap)
{
    return {at.x() + gap, at.y() - size.height() / 2.0, size.width(), size.height()};
}

QRectF leftOf(QPointF at, QSizeF size, double gap)
{
    return {at.x() - gap - size.width(), at.y() - size.height() / 2.0, size.width(), size.height()};
}

QRectF above(QPointF at, QSizeF size, double gap)
{
    return {at.x() - size.width() / 2.0, at.y() - gap - size.height(), size.width(), size.height()};
}

QRectF below(QPointF at, QSizeF size, double gap)
{
    return {at.x() - size.width() / 2.0, at.y() + gap, size.width(), size.height()};
}

} // namespace app
