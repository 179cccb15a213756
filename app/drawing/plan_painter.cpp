#include "app/drawing/plan_painter.hpp"

#include "app/drawing/label_room.hpp"
#include "app/drawing/layer.hpp"
#include "app/drawing/pens.hpp"

#include <QImage>
#include <QLinearGradient>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace app {
namespace {

class PlanPainter {
public:
    PlanPainter(QPainter& painter, const PlanScene& scene, const DrawingPalette& colours)
        : p_(painter), scene_(scene), c_(colours), room_(scene.canvas)
    {
    }

    void paint()
    {
        p_.setRenderHint(QPainter::Antialiasing);
        p_.fillRect(QRectF(QPointF(0, 0), scene_.canvas), c_.paper);
        if (scene_.map)
            drawMap(*scene_.map);
        for (const auto& shape : scene_.shapes)
            drawShape(shape);
        p_.setPen(Qt::NoPen);
        p_.setBrush(withAlpha(c_.shadow, 0.34));
        p_.drawPath(scene_.shadow);
        for (const auto& tree : scene_.trees)
            drawTree(tree);
        p_.setBrush(Qt::NoBrush);
        for (const auto& wire : scene_.wires) {
            p_.setPen(QPen(c_.line, 1.8, Qt::DashDotLine));
            p_.drawPath(wire);
        }
        drawGaze();
        drawSun();
        drawNorth();
        drawScale();
        const QSizeF buttons(96.0, 52.0); // of the window's page, in the corner
        room_.take(QRectF(
            {scene_.canvas.width() - buttons.width(), scene_.canvas.height() - buttons.height()},
            buttons));
        room_.take({0.0, 0.0, scene_.canvas.width(), scene_.underButtons});
        if (scene_.map)
            drawMapScale(*scene_.map);
        drawWind();
        drawDraft();
        names();
    }

private:
    QColor colourOf(PlanKind kind) const
    {
        switch (kind) {
        case PlanKind::strip:
            return c_.strip;
        case PlanKind::hedge:
        case PlanKind::shrub:
        case PlanKind::bed:
            return c_.planting;
        case PlanKind::lawn:
            return c_.leaf;
        case PlanKind::building:
        case PlanKind::fence:
        case PlanKind::glasshouse:
        case PlanKind::pond:
            break;
        }
        return c_.structure;
    }

    /// From the colour of shadow to that of sun.
    QColor sunColour(double share) const
    {
        const auto mixed = [&](int dark, int light) {
            return static_cast<int>(std::lround(dark + share * (light - dark)));
        };
        const QColor dark = c_.shadow;
        const QColor light = c_.sun.lighter(135);
        return {mixed(dark.red(), light.red()), mixed(dark.green(), light.green()),
                mixed(dark.blue(), light.blue())};
    }

    void drawMap(const PlanMap& map)
    {
        QImage image(map.columns, map.rows, QImage::Format_RGB32);
        for (int row = 0; row < map.rows; ++row)
            for (int column = 0; column < map.columns; ++column)
                image.setPixelColor(
                    column, map.rows - 1 - row,
                    sunColour(map.share[static_cast<std::size_t>(row * map.columns + column)]));
        p_.setRenderHint(QPainter::SmoothPixmapTransform);
        p_.setOpacity(0.8);
        p_.drawImage(map.target, image);
        p_.setOpacity(1.0);
    }

    void drawMapScale(const PlanMap& map)
    {
        constexpr double kWide = 96.0;
        constexpr double kHigh = 8.0;
        // Above the buttons of the window's page.
        const QRectF bar(scene_.canvas.width() - kWide - 16.0, scene_.canvas.height() - 62.0, kWide,
                         kHigh);
        const QSizeF low = textSize(p_, map.scale.front());
        const QSizeF high = textSize(p_, map.scale.back());
        const QRectF around(bar.left() - 6.0, bar.top() - low.height() - 6.0, kWide + 12.0,
                            kHigh + low.height() + 12.0);
        p_.fillRect(around, withAlpha(c_.paper, 0.85));
        QLinearGradient ramp(bar.topLeft(), bar.topRight());
        for (const double share : {0.0, 0.5, 1.0})
            ramp.setColorAt(share, sunColour(share));
        p_.setPen(QPen(c_.ink, 0.8));
        p_.setBrush(ramp);
        p_.drawRect(bar);
        const double top = bar.top() - low.height() - 2.0;
        drawText(p_, QRectF(QPointF(bar.left(), top), low), map.scale.front(), c_.ink,
                 Qt::transparent);
        drawText(p_, QRectF(QPointF(bar.right() - high.width(), top), high), map.scale.back(),
                 c_.ink, Qt::transparent);
        room_.take(around);
    }

    void drawShape(const PlanShape& shape)
    {
        const QColor colour = colourOf(shape.kind);
        p_.setPen(QPen(withAlpha(colour, 0.9), scene_.map ? 1.6 : 1.0));
        p_.setBrush(withAlpha(colour, shape.kind == PlanKind::lawn ? 0.14 : 0.38));
        if (scene_.map)
            p_.setBrush(Qt::NoBrush);
        p_.drawPolygon(shape.outline);
        if (shape.kind == PlanKind::building) {
            p_.setBrush(QBrush(withAlpha(colour, 0.55), Qt::BDiagPattern));
            p_.drawPolygon(shape.outline);
        }
    }

    void drawTree(const PlanTree& tree)
    {
        drawTogether(
            p_, tree.crown,
            QPen(tree.chosen ? c_.chosen : withAlpha(c_.leaf, 0.9), tree.chosen ? 2.0 : 1.0),
            withAlpha(c_.leaf, scene_.map    ? 0.0
                               : tree.chosen ? 0.30
                                             : 0.20),
            QRectF(QPointF(0.0, 0.0), scene_.canvas));
        p_.setPen(QPen(c_.ink, 1.0));
        p_.setBrush(c_.bark);
        p_.drawEllipse(tree.stem, tree.stemRadius, tree.stemRadius);
    }

    void drawGaze()
    {
        if (scene_.gaze.isNull())
            return;
        QPen sight(withAlpha(c_.chosen, 0.8), 1.2);
        sight.setDashPattern({4.0, 4.0});
        p_.setPen(sight);
        p_.drawLine(scene_.gaze);
        keepClear(scene_.eye, 9.0); // the handle that the window's page lays there
    }

    /// No name over what is drawn here.
    void keepClear(QPointF at, double reach)
    {
        room_.take(QRectF(at - QPointF(reach, reach), QSizeF(2.0 * reach, 2.0 * reach)));
    }

    void drawSun()
    {
        if (!scene_.sunRay)
            return;
        const QPointF at = scene_.sunRay->p1();
        p_.setPen(QPen(c_.sun, 2.0, Qt::SolidLine, Qt::RoundCap));
        for (int ray = 0; ray < 8; ++ray) {
            const double angle = ray * M_PI / 4.0;
            const QPointF out(std::cos(angle), std::sin(angle));
            p_.drawLine(at + 9.0 * out, at + 12.5 * out);
        }
        p_.setBrush(c_.sun);
        p_.drawEllipse(at, 6.0, 6.0);
        keepClear(at, 13.0);
    }

    void drawWind()
    {
        if (!scene_.wind)
            return;
        const QPointF tip = scene_.wind->p2();
        const QPointF back = (scene_.wind->p1() - tip) / scene_.wind->length();
        const QPointF across(-back.y(), back.x());
        p_.setPen(QPen(c_.ink, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        p_.drawLine(*scene_.wind);
        p_.setBrush(c_.ink);
        p_.drawPolygon(
            QPolygonF({tip, tip + 9.0 * back + 4.5 * across, tip + 9.0 * back - 4.5 * across}));
        const QSizeF size = textSize(p_, scene_.windText);
        const QPointF tail = scene_.wind->p1();
        if (const auto box = room_.placeIfFree({rightOf(tail, size, 6.0), leftOf(tail, size, 6.0),
                                                above(tail, size, 4.0), below(tail, size, 4.0)}))
            drawText(p_, *box, scene_.windText, c_.ink, withAlpha(c_.paper, 0.72));
    }

    void drawDraft()
    {
        p_.setPen(QPen(c_.chosen, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        p_.setBrush(Qt::NoBrush);
        if (!scene_.chosen.isEmpty())
            p_.drawPolyline(scene_.chosen);
        if (scene_.draft.isEmpty())
            return;
        if (scene_.draftCloses) {
            p_.setBrush(withAlpha(c_.chosen, 0.14));
            p_.drawPolygon(scene_.draft);
            p_.setBrush(Qt::NoBrush);
        }
        p_.drawPolyline(scene_.draft);
        p_.setBrush(c_.paper);
        for (const QPointF corner : scene_.draft)
            p_.drawEllipse(corner, 4.5, 4.5);
    }

    void drawNorth()
    {
        const QPointF tip(scene_.canvas.width() - 24.0, 16.0);
        p_.setPen(QPen(c_.ink, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        p_.setBrush(c_.ink);
        p_.drawPolygon(QPolygonF(
            {tip, tip + QPointF(5.0, 13.0), tip + QPointF(0.0, 10.0), tip + QPointF(-5.0, 13.0)}));
        const QRectF letter(tip + QPointF(-10.0, 14.0), QSizeF(20.0, 18.0));
        drawText(p_, letter, QObject::tr("N", "north on the plan"), c_.ink, Qt::transparent);
        room_.take(QRectF(tip - QPointF(12.0, 4.0), QSizeF(24.0, 38.0)));
    }

    void drawScale()
    {
        p_.setPen(QPen(c_.ink, 1.5));
        p_.drawLine(scene_.scaleBar);
        for (const QPointF end : {scene_.scaleBar.p1(), scene_.scaleBar.p2()})
            p_.drawLine(end - QPointF(0.0, 4.0), end + QPointF(0.0, 4.0));
        const QSizeF size = textSize(p_, scene_.scaleText);
        const QRectF box = rightOf(scene_.scaleBar.p2(), size, 6.0);
        room_.take(box);
        drawText(p_, box, scene_.scaleText, c_.ink, withAlpha(c_.paper, 0.7));
    }

    // A name that has no room is left out: the same things are named on the side view and in the
    // answers. Trees come first, then the largest.
    void names()
    {
        for (const auto& tree : scene_.trees)
            name(tree.name, tree.stem + QPointF(0.0, tree.stemRadius), tree.stemRadius);
        auto shapes = scene_.shapes;
        std::ranges::stable_sort(shapes, std::ranges::greater{}, [](const PlanShape& shape) {
            const auto box = shape.outline.boundingRect();
            return box.width() * box.height();
        });
        for (const auto& shape : shapes)
            name(shape.name, shape.nameAt, 0.0);
    }

    void name(const QString& text, QPointF at, double stem)
    {
        if (text.isEmpty())
            return;
        const QSizeF size = textSize(p_, text);
        const QRectF middle(at - QPointF(size.width(), size.height()) / 2.0, size);
        constexpr double kPastTheSun = 15.0;
        const QRectF lower = below(at, size, 4.0);
        const QRectF upper = above(at, size, 2.0 * stem + 4.0);
        const auto box =
            stem > 0.0 ? room_.placeIfFree({lower, upper})
                       : room_.placeIfFree({middle, lower, upper, rightOf(at, size, 6.0),
                                            leftOf(at, size, 6.0), below(at, size, kPastTheSun),
                                            above(at, size, kPastTheSun)});
        if (box)
            drawText(p_, *box, text, c_.ink, withAlpha(c_.paper, 0.72));
    }

    QPainter& p_;
    const PlanScene& scene_;
    const DrawingPalette& c_;
    LabelRoom room_;
};

} // namespace

void paintPlan(QPainter& painter, const PlanScene& scene, const DrawingPalette& colours)
{
    PlanPainter(painter, scene, colours).paint();
}

} // namespace app
