#include "app/drawing/kept_pictures.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>

namespace app {
namespace {

constexpr QRectF kCanvas(0.0, 0.0, 120.0, 80.0);

QPainterPath twoDiscs()
{
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    path.addEllipse(QPointF(45.3, 40.2), 25.0, 25.0);
    path.addEllipse(QPointF(72.8, 38.9), 20.0, 20.0);
    return path;
}

template <typename Paint>
QImage painted(double scale, Paint paint)
{
    QImage image((kCanvas.size() * scale).toSize(), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale, scale);
    paint(painter);
    return image;
}

int farthestApart(const QImage& a, const QImage& b)
{
    int most = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            most = std::max(most, std::abs(qGreen(a.pixel(x, y)) - qGreen(b.pixel(x, y))));
    return most;
}

} // namespace

// Brute force: the picture of shapes filled together is that of their reckoned union, but for the
// line itself, which lies outside the edge and not on it.
TEST(DrawTogether, FillsWhatTheUnionFillsAndDrawsNoLineWithin)
{
    const QPen pen(QColor(20, 90, 20), 2.0);
    const QColor fill(40, 160, 40, 80);
    const auto together =
        painted(1.0, [&](QPainter& p) { drawTogether(p, twoDiscs(), pen, fill, kCanvas); });
    const auto reckoned = painted(1.0, [&](QPainter& p) {
        p.setPen(Qt::NoPen);
        p.setBrush(fill);
        p.drawPath(twoDiscs().simplified());
    });
    for (const QPoint inside : {QPoint(45, 40), QPoint(60, 40), QPoint(72, 40), QPoint(5, 5)})
        EXPECT_LE(std::abs(qGreen(together.pixel(inside)) - qGreen(reckoned.pixel(inside))), 1);
    EXPECT_LT(qGreen(together.pixel(45, 14)), 150); // the line along the upper edge
}

// Law: a kept picture looks as what is painted at once, whatever the screen's scale.
TEST(KeptPictures, LookAsWhatIsPaintedAtOnce)
{
    const auto paint = [](QPainter& p) {
        p.setPen(QPen(QColor(0, 0, 90), 1.5));
        p.setBrush(QColor(200, 60, 60, 120));
        p.drawPath(twoDiscs());
    };
    for (const double scale : {1.0, 2.0}) {
        KeptPictures<int> kept;
        const auto bounds = twoDiscs().boundingRect().adjusted(-2, -2, 2, 2);
        const auto whole = painted(scale, paint);
        for (int times = 0; times < 2; ++times)
            EXPECT_LE(
                farthestApart(
                    painted(scale, [&](QPainter& p) { kept.draw(p, 0, 7, bounds, paint); }), whole),
                3);
    }
}

TEST(KeptPictures, ArePaintedAnewOnlyWhenTheyLookOtherwise)
{
    KeptPictures<int> kept;
    int paintings = 0;
    const auto draw = [&](std::size_t limb, int look, const QRectF& bounds) {
        (void)painted(1.0, [&](QPainter& p) {
            kept.draw(p, limb, look, bounds, [&](QPainter&) { ++paintings; });
        });
        return paintings;
    };
    EXPECT_EQ(draw(0, 1, kCanvas), 1);
    EXPECT_EQ(draw(0, 1, kCanvas), 1);
    EXPECT_EQ(draw(1, 1, kCanvas), 2);
    EXPECT_EQ(draw(0, 2, kCanvas), 3);
    EXPECT_EQ(draw(0, 2, kCanvas.adjusted(0, 0, -9, 0)), 4);
    EXPECT_EQ(draw(1, 1, kCanvas), 4);
}

} // namespace app
