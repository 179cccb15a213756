#include "app/view/drawings.hpp"

#include "app/drawing/plan_painter.hpp"
#include "app/view/hear.hpp"

#include <QPainter>

namespace app {

Drawing::Drawing(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setOpaquePainting(true);
}

void Drawing::setColours(DrawingColours* colours)
{
    const auto anew = [this] { update(); };
    if (!hear(colours_, colours, this, anew, &DrawingColours::changed))
        return;
    emit coloursChanged();
    update();
}

void Drawing::setFont(const QFont& font)
{
    if (font == font_)
        return;
    font_ = font;
    emit fontChanged();
    update();
}

void Drawing::paint(QPainter* painter)
{
    painter->setFont(font_);
    if (colours_)
        draw(*painter, *colours_);
}

void Drawing::geometryChange(const QRectF& to, const QRectF& from)
{
    QQuickPaintedItem::geometryChange(to, from);
    if (to.size() != from.size())
        resized(to.size());
}

void Drawing::resized(QSizeF)
{
    update();
}

void SideDrawing::setSide(SideViewModel* side)
{
    const auto anew = [this] { update(); };
    if (!hear(side_, side, this, anew, &SideViewModel::sceneChanged, &SideViewModel::strokeChanged))
        return;
    resized(size());
    emit sideChanged();
    update();
}

void SideDrawing::draw(QPainter& painter, const DrawingPalette& colours)
{
    if (!side_)
        return;
    paintSide(painter, side_->scene(), colours, &pictures_);
    painter.setPen(QPen(colours.chosen, 4.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(side_->stroke());
}

void SideDrawing::resized(QSizeF size)
{
    if (side_)
        side_->resize(size.width(), size.height());
}

void PlanDrawing::setPlan(PlanViewModel* plan)
{
    const auto anew = [this] { update(); };
    if (!hear(plan_, plan, this, anew, &PlanViewModel::sceneChanged))
        return;
    resized(size());
    emit planChanged();
    update();
}

void PlanDrawing::draw(QPainter& painter, const DrawingPalette& colours)
{
    if (plan_)
        paintPlan(painter, plan_->scene(), colours);
}

void PlanDrawing::resized(QSizeF size)
{
    if (plan_)
        plan_->resize(size.width(), size.height());
}

} // namespace app
