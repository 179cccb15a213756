#include "app/view/drawings.hpp"

#include "app/drawing/plan_painter.hpp"

#include <QPainter>

namespace app {

Drawing::Drawing(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setOpaquePainting(true);
}

void Drawing::setColours(DrawingColours* colours)
{
    if (colours == colours_)
        return;
    if (colours_)
        disconnect(colours_, nullptr, this, nullptr);
    colours_ = colours;
    if (colours_)
        connect(colours_, &DrawingColours::changed, this, [this] { update(); });
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

void SideDrawing::setSide(SideViewModel* side)
{
    if (side == side_)
        return;
    if (side_)
        disconnect(side_, nullptr, this, nullptr);
    side_ = side;
    if (side_) {
        for (const auto signal : {&SideViewModel::sceneChanged, &SideViewModel::strokeChanged})
            connect(side_, signal, this, [this] { update(); });
        side_->resize(width(), height());
    }
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
    if (plan == plan_)
        return;
    if (plan_)
        disconnect(plan_, nullptr, this, nullptr);
    plan_ = plan;
    if (plan_) {
        connect(plan_, &PlanViewModel::sceneChanged, this, [this] { update(); });
        plan_->resize(width(), height());
    }
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
