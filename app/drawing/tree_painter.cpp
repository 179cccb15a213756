#include "app/drawing/tree_painter.hpp"

#include "app/drawing/layer.hpp"
#include "app/drawing/load_scale.hpp"
#include "app/drawing/pens.hpp"

#include <QPainter>

namespace app {
namespace {

void paintLeaf(QPainter& on, const SidePictures::LeafLook& look, const QRectF& within)
{
    on.setPen(Qt::NoPen);
    on.setBrush(look.body);
    on.drawPath(look.bodies);
    if (look.dab.isValid()) {
        on.setBrush(look.dab);
        on.drawPath(look.dabs);
    }
    if (look.outline.isValid())
        drawTogether(on, look.bodies, QPen(look.outline, 1.2), Qt::NoBrush, within);
}

void paintWood(QPainter& on, const SidePictures::WoodLook& look)
{
    on.setBrush(Qt::NoBrush);
    if (look.halo.isValid()) {
        on.setPen(QPen(look.halo, 7.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        on.drawPath(look.wood);
    }
    // The outline first, so that the fill covers where one stretch of wood meets the next.
    on.setPen(look.edge);
    on.drawPath(look.wood);
    on.setPen(Qt::NoPen);
    on.setBrush(look.fill);
    on.drawPath(look.wood);
}

QBrush limbBrush(const SceneLimb& limb, const DrawingPalette& colours)
{
    if (!limb.hasStrength)
        return {colours.ink, Qt::Dense4Pattern};
    if (!limb.utilisation)
        return colours.bark;
    return colours.loads.value(loadStep(*limb.utilisation), colours.bark);
}

} // namespace

TreePainter::TreePainter(QPainter& painter, const SideScene& scene, const DrawingPalette& colours,
                         SidePictures& pictures)
    : p_(painter), scene_(scene), c_(colours), pictures_(pictures)
{
}

QRectF TreePainter::seenPart(const QRectF& bounds, double around) const
{
    return bounds.adjusted(-around, -around, around, around) &
           QRectF(QPointF(0.0, 0.0), scene_.canvas);
}

void TreePainter::leaves() const
{
    for (const auto& leaf : scene_.leaves) {
        const double fullness = 0.35 + 0.65 * scene_.leafShare;
        const double alpha = (0.10 + 0.08 * leaf.nearness) * fullness;
        SidePictures::LeafLook look{leaf.bodies, leaf.dabs,
                                    withAlpha(c_.leaf, leaf.chosen ? alpha + 0.14 : alpha),
                                    QColor(), QColor()};
        if (scene_.leafShare > 0.05)
            look.dab = withAlpha(c_.leaf, (0.28 + 0.30 * leaf.nearness) * scene_.leafShare);
        if (leaf.chosen)
            look.outline = withAlpha(c_.leaf, 0.9);
        const auto bounds = seenPart(leaf.bodies.boundingRect(), 6.0);
        pictures_.leaf.draw(p_, leaf.limb, look, bounds,
                            [&](QPainter& on) { paintLeaf(on, look, bounds); });
    }
}

void TreePainter::gone() const
{
    QPen dashed(withAlpha(c_.cut, 0.9), 1.0);
    dashed.setDashPattern({3.0, 3.0});
    p_.setPen(dashed);
    p_.setBrush(withAlpha(c_.cut, 0.06));
    for (const auto& wood : scene_.gone)
        p_.drawPath(wood);
}

void TreePainter::limbs() const
{
    for (const auto& limb : scene_.limbs) {
        SidePictures::WoodLook look{limb.wood, limbBrush(limb, c_),
                                    QPen(withAlpha(c_.ink, 0.85), 2.2), QColor()};
        if (limb.guessed)
            look.edge.setDashPattern({1.5, 1.5});
        if (limb.chosen)
            look.halo = c_.chosen;
        pictures_.wood.draw(p_, limb.limb, look, seenPart(limb.wood.boundingRect(), 6.0),
                            [&](QPainter& on) { paintWood(on, look); });
    }
}

void TreePainter::shoots() const
{
    for (const auto& leaf : scene_.leaves) {
        if (leaf.shoots.empty())
            continue;
        const SidePictures::ShootsLook look{
            leaf.shoots,
            withAlpha(c_.leaf, (0.25 + 0.35 * leaf.nearness) * (0.4 + 0.6 * scene_.leafShare))};
        QRectF bounds;
        for (const auto& shoot : leaf.shoots)
            bounds |= QRectF(shoot.p1(), shoot.p2()).normalized().adjusted(-1, -1, 1, 1);
        pictures_.shoots.draw(p_, leaf.limb, look, seenPart(bounds, 2.0), [&](QPainter& on) {
            on.setPen(QPen(look.colour, 1.2, Qt::SolidLine, Qt::RoundCap));
            for (const auto& shoot : look.shoots)
                on.drawLine(shoot);
        });
    }
}

} // namespace app
