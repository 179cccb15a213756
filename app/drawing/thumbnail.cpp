#include "app/drawing/thumbnail.hpp"

#include "app/drawing/pens.hpp"
#include "app/drawing/side_scene.hpp"

#include <QPainter>

#include <algorithm>

namespace app {
namespace {

constexpr double kMargin = 5.0;
constexpr double kLeast_m = 1.0; // a sapling is not blown up to fill the picture

SideFrame frameFor(const model::Tree& tree, double bearing_deg, QSizeF canvas)
{
    SideFrame frame;
    frame.bearing_deg = bearing_deg;
    frame.pixelsPerMetre =
        std::min((canvas.width() - 2.0 * kMargin) / (2.0 * std::max(kLeast_m, reach_m(tree))),
                 (canvas.height() - 2.0 * kMargin) / std::max(kLeast_m, model::height_m(tree)));
    frame.foot = {canvas.width() / 2.0, canvas.height() - kMargin};
    return frame;
}

void paintLeaves(QPainter& painter, const SideScene& scene, const DrawingPalette& colours)
{
    for (const auto& leaf : scene.leaves) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(withAlpha(colours.leaf, 0.35 + 0.25 * leaf.nearness));
        painter.drawPath(leaf.bodies);
        painter.setPen(QPen(withAlpha(colours.leaf, 0.6), 0.8));
        painter.drawLines(QList<QLineF>(leaf.shoots.begin(), leaf.shoots.end()));
    }
}

} // namespace

void paintThumbnail(QPainter& painter, const model::Tree& before, const model::Tree& shown,
                    double bearing_deg, QSizeF canvas, const DrawingPalette& colours)
{
    const model::Garden nothing;
    const Units units{QLocale::c()};
    const auto frame = frameFor(before, bearing_deg, canvas);
    const auto scene = sideScene({nothing, before, shown, frame, canvas, units,
                                  [](const std::string&) { return std::nullopt; }, nullptr, nullptr,
                                  std::string(), 1.0});
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(QPointF(0, 0), canvas), colours.paper);
    paintLeaves(painter, scene, colours);
    // What stays is drawn over it: the outline of all the wood there was is what the scene gives.
    painter.setPen(QPen(colours.cut, 1.0, Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    for (const auto& wood : scene.gone)
        painter.drawPath(wood);
    painter.setPen(QPen(colours.bark, 1.5));
    painter.setBrush(colours.bark);
    for (const auto& limb : scene.limbs)
        painter.drawPath(limb.wood);
    painter.setPen(QPen(colours.soil, 1.5));
    painter.drawLine(QPointF(0.0, frame.foot.y()), QPointF(canvas.width(), frame.foot.y()));
}

} // namespace app
