#include "app/drawing/side_painter.hpp"

#include "app/drawing/label_room.hpp"
#include "app/drawing/pens.hpp"
#include "app/drawing/tree_painter.hpp"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <optional>

namespace app {
namespace {

constexpr double kSoilDepth = 8.0;
constexpr double kNameRow = 17.0;
constexpr double kBadgeRadius = 11.0;

class SidePainter {
public:
    SidePainter(QPainter& painter, const SideScene& scene, const DrawingPalette& colours,
                SidePictures& pictures)
        : p_(painter), scene_(scene), c_(colours), pictures_(pictures), room_(scene.canvas)
    {
    }

    void paint()
    {
        const TreePainter tree(p_, scene_, c_, pictures_);
        p_.setRenderHint(QPainter::Antialiasing);
        p_.fillRect(QRectF(QPointF(0, 0), scene_.canvas), c_.paper);
        underlay();
        blocks(true);
        wires();
        neededRooms();
        tree.leaves();
        tree.gone();
        tree.limbs();
        tree.shoots();
        blocks(false);
        ground();
        takeRoomForBadges();
        takeRoomForScale();
        gaps();
        cuts();
        figures();
        blockNames();
        height();
        scaleBar();
        marks();
    }

private:
    void underlay()
    {
        const auto& under = scene_.underlay;
        if (under.image.isNull())
            return;
        p_.save();
        p_.setRenderHint(QPainter::SmoothPixmapTransform);
        p_.setOpacity(under.opacity);
        p_.setTransform(under.toCanvas, true);
        p_.drawImage(QPointF(0.0, 0.0), under.image);
        p_.restore();
    }

    /// Crosses on the places of the photo that were pressed, seen on light and dark.
    void marks()
    {
        constexpr double kArm = 9.0;
        for (const QPointF at : scene_.underlay.marks)
            for (const auto& [colour, width] :
                 {std::pair{c_.paper, 5.0}, std::pair{c_.chosen, 2.0}}) {
                p_.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap));
                p_.drawLine(at - QPointF(kArm, 0.0), at + QPointF(kArm, 0.0));
                p_.drawLine(at - QPointF(0.0, kArm), at + QPointF(0.0, kArm));
            }
    }

    QColor blockColour(Block kind) const
    {
        return kind == Block::hedge || kind == Block::shrub ? c_.planting : c_.structure;
    }

    void blocks(bool behind)
    {
        for (const auto& block : scene_.blocks) {
            if (block.behind != behind)
                continue;
            const bool leafy = block.kind == Block::hedge || block.kind == Block::shrub;
            const double round = leafy ? std::min(10.0, block.outline.height() / 4.0) : 2.0;
            p_.setPen(QPen(withAlpha(blockColour(block.kind), behind ? 0.75 : 1.0), 1.2));
            p_.setBrush(withAlpha(blockColour(block.kind), behind ? 0.22 : 0.38));
            p_.drawRoundedRect(block.outline, round, round);
        }
    }

    /// Last of all words: what is asked about comes first.
    void blockNames()
    {
        for (const auto& block : scene_.blocks)
            nameBlock(block);
    }

    void nameBlock(const SceneBlock& block)
    {
        const QSizeF size = textSize(p_, block.name);
        const auto onCanvas = [&](QRectF box) {
            box.moveLeft(std::clamp(box.left(), 2.0,
                                    std::max(2.0, scene_.canvas.width() - size.width() - 2.0)));
            return box;
        };
        // Beside the tree rather than behind its stem.
        QPointF middle = block.outline.center();
        const double stemX = scene_.canvas.width() / 2.0;
        if (std::abs(middle.x() - stemX) < size.width())
            middle.rx() = stemX - block.outline.left() > block.outline.right() - stemX
                              ? (block.outline.left() * 3.0 + stemX) / 4.0
                              : (block.outline.right() * 3.0 + stemX) / 4.0;
        const QRectF box =
            onCanvas(block.outline.height() > size.height() + 4.0
                         ? QRectF(middle - QPointF(size.width(), size.height()) / 2.0, size)
                         : above({middle.x(), block.outline.top()}, size, 3.0));
        const QPointF row(0.0, size.height() + 1.0);
        if (const auto free = room_.placeIfFree({box, box.translated(-row),
                                                 onCanvas(leftOf(box.center(), size, 8.0)),
                                                 onCanvas(rightOf(box.center(), size, 8.0))}))
            drawText(p_, *free, block.name, c_.ink, withAlpha(c_.paper, 0.65));
    }

    void wires()
    {
        for (const auto& wire : scene_.wires) {
            p_.setBrush(Qt::NoBrush);
            p_.setPen(QPen(c_.line, 2.0, Qt::DashDotLine));
            p_.drawPath(wire.path);
            const QSizeF size = textSize(p_, wire.name);
            if (wire.nameAt.isNull())
                continue;
            drawText(p_,
                     room_.place({above(wire.nameAt, size, 5.0), below(wire.nameAt, size, 5.0),
                                  rightOf(wire.nameAt, size, 8.0)}),
                     wire.name, c_.line, withAlpha(c_.paper, 0.8));
        }
    }

    void neededRooms()
    {
        for (const auto& need : scene_.needs) {
            const QColor colour = need.enough ? c_.enough : c_.shortOf;
            p_.fillRect(need.needed, withAlpha(colour, 0.10));
            p_.setPen(QPen(colour, 1.6, Qt::CustomDashLine));
            QPen dashed(colour, 1.6);
            dashed.setDashPattern({5.0, 4.0});
            p_.setPen(dashed);
            p_.drawLine(need.needed.topLeft(), need.needed.topRight());
        }
    }

    void ground()
    {
        const QRectF soil(0.0, scene_.groundY, scene_.canvas.width(),
                          scene_.canvas.height() - scene_.groundY);
        p_.fillRect(soil, mixed(c_.paper, c_.soil, 0.28F));
        for (const auto& band : scene_.bands)
            drawBand(band);
        p_.setPen(QPen(c_.ink, 1.6));
        p_.drawLine(QPointF(0.0, scene_.groundY), QPointF(scene_.canvas.width(), scene_.groundY));
    }

    QColor bandColour(Ground kind) const
    {
        switch (kind) {
        case Ground::strip:
            return c_.strip;
        case Ground::bed:
            return c_.planting;
        case Ground::lawn:
            return c_.leaf;
        case Ground::pond:
            break;
        }
        return c_.structure;
    }

    void drawBand(const SceneBand& band)
    {
        const double y = scene_.groundY + 5.0 + band.row * (kSoilDepth + kNameRow);
        const QRectF bar(band.fromX, y, band.toX - band.fromX, kSoilDepth);
        p_.setPen(Qt::NoPen);
        p_.setBrush(bandColour(band.kind));
        p_.drawRoundedRect(bar, 2.0, 2.0);
        const QSizeF size = textSize(p_, band.name);
        const double x = std::clamp(bar.center().x() - size.width() / 2.0, 4.0,
                                    scene_.canvas.width() - size.width() - 4.0);
        const QRectF box(QPointF(x, y + kSoilDepth + 1.0), size);
        if (box.bottom() > scene_.canvas.height() + 1.0)
            return; // half a name tells nothing; the plan has it
        room_.take(box);
        drawText(p_, box, band.name, c_.ink, Qt::transparent);
    }

    void cuts()
    {
        for (const auto& cut : scene_.cuts) {
            p_.setPen(QPen(c_.paper, 6.0, Qt::SolidLine, Qt::RoundCap));
            p_.drawLine(cut.stroke);
            QPen pen(c_.cut, 3.0, Qt::SolidLine, Qt::RoundCap);
            if (cut.kind == model::CutKind::lifting)
                pen.setDashPattern({2.0, 2.0});
            p_.setPen(pen);
            p_.drawLine(cut.stroke);
        }
        for (const auto& cut : scene_.cuts) // above all strokes: a hidden number is a lost cut
            drawBadge(cut);
    }

    static QRectF disc(const SceneCut& cut)
    {
        return {cut.badge - QPointF(kBadgeRadius, kBadgeRadius),
                QSizeF(2 * kBadgeRadius, 2 * kBadgeRadius)};
    }

    void takeRoomForBadges()
    {
        for (const auto& cut : scene_.cuts) {
            room_.take(disc(cut));
            room_.take(
                QRectF(cut.stroke.p1(), cut.stroke.p2()).normalized().adjusted(-2, -2, 2, 2));
        }
    }

    void takeRoomForScale()
    {
        room_.take(QRectF(scene_.scaleBar.p1(), scene_.scaleBar.p2()).adjusted(-2, -6, 2, 6));
        room_.take(leftOf(scene_.scaleBar.p1(), textSize(p_, scene_.scaleText), 6.0));
    }

    void drawBadge(const SceneCut& cut)
    {
        p_.setPen(QPen(c_.paper, 2.0));
        p_.setBrush(c_.cut);
        p_.drawEllipse(disc(cut));
        p_.setPen(c_.paper);
        p_.drawText(disc(cut), Qt::AlignCenter, QString::number(cut.number));
    }

    void gaps()
    {
        for (const auto& need : scene_.needs) {
            const QColor colour = need.enough ? c_.enough : c_.shortOf;
            const QSizeF neededSize = textSize(p_, need.neededText);
            const QPointF end = need.needed.topRight();
            const QPointF start = need.needed.topLeft();
            const double half = neededSize.width() / 2.0;
            const QPointF inEnd(end.x() - half, end.y());
            const QPointF inStart(start.x() + half, start.y());
            drawText(
                p_,
                room_.place({rightOf(end, neededSize, 2.0), leftOf(start, neededSize, 2.0),
                             above(inEnd, neededSize, 3.0), above(inStart, neededSize, 3.0),
                             below(inEnd, neededSize, 3.0), below(inStart, neededSize, 3.0),
                             rightOf(end + QPointF(0.0, neededSize.height()), neededSize, 2.0),
                             leftOf(start + QPointF(0.0, neededSize.height()), neededSize, 2.0)}),
                need.neededText, colour, withAlpha(c_.paper, 0.85));
            if (need.clear)
                dimension(*need.clear, need.clearText, c_.ink);
            if (need.missing)
                dimension(*need.missing, need.missingText, c_.shortOf);
        }
    }

    void dimension(const QLineF& line, const QString& text, const QColor& colour)
    {
        p_.setPen(QPen(colour, 1.8));
        p_.drawLine(line);
        for (const QPointF end : {line.p1(), line.p2()})
            p_.drawLine(end - QPointF(5.0, 0.0), end + QPointF(5.0, 0.0));
        const QSizeF size = textSize(p_, text);
        const QPointF middle = line.center();
        const QPointF lift(0.0, size.height());
        const QPointF far(0.0, 2.0 * size.height());
        drawText(p_,
                 room_.place({rightOf(middle, size, 8.0), leftOf(middle, size, 8.0),
                              rightOf(middle - lift, size, 8.0), leftOf(middle - lift, size, 8.0),
                              leftOf(middle + lift, size, 8.0), rightOf(middle + lift, size, 8.0),
                              leftOf(middle - far, size, 8.0), rightOf(middle - far, size, 8.0)}),
                 text, colour, withAlpha(c_.paper, 0.9));
    }

    void figures()
    {
        for (const auto& figure : scene_.figures) {
            const QSizeF size = textSize(p_, figure.text);
            const auto places = {rightOf(figure.at, size, 10.0), leftOf(figure.at, size, 10.0),
                                 above(figure.at, size, 10.0), below(figure.at, size, 10.0)};
            // One figure over another tells neither; all of them stand beside the drawing too.
            const auto box =
                figure.chosen ? std::optional(room_.place(places)) : room_.placeIfFree(places);
            if (box)
                drawText(p_, *box, figure.text, c_.ink,
                         withAlpha(c_.paper, figure.chosen ? 0.95 : 0.8));
        }
    }

    void height()
    {
        const QLineF line(scene_.heightX, scene_.groundY, scene_.heightX, scene_.topY);
        p_.setPen(QPen(c_.faintInk, 1.0));
        p_.drawLine(line);
        for (const QPointF end : {line.p1(), line.p2()})
            p_.drawLine(end - QPointF(4.0, 0.0), end + QPointF(4.0, 0.0));
        const QSizeF size = textSize(p_, scene_.heightText);
        drawText(p_,
                 room_.place({above(line.p2(), size, 3.0), leftOf(line.center(), size, 6.0),
                              rightOf(line.center(), size, 6.0)}),
                 scene_.heightText, c_.faintInk, Qt::transparent);
    }

    void scaleBar()
    {
        p_.setPen(QPen(c_.ink, 1.5));
        p_.drawLine(scene_.scaleBar);
        for (const QPointF end : {scene_.scaleBar.p1(), scene_.scaleBar.p2()})
            p_.drawLine(end - QPointF(0.0, 4.0), end + QPointF(0.0, 4.0));
        const QSizeF size = textSize(p_, scene_.scaleText);
        drawText(p_, leftOf(scene_.scaleBar.p1(), size, 6.0), scene_.scaleText, c_.ink,
                 Qt::transparent);
    }

    QPainter& p_;
    const SideScene& scene_;
    const DrawingPalette& c_;
    SidePictures& pictures_;
    LabelRoom room_;
};

} // namespace

void paintSide(QPainter& painter, const SideScene& scene, const DrawingPalette& colours,
               SidePictures* pictures)
{
    SidePictures once;
    SidePainter(painter, scene, colours, pictures ? *pictures : once).paint();
}

} // namespace app
