#include "app/drawing/photo_lay.hpp"

#include <QLineF>

#include <cmath>
#include <numbers>

namespace app {
namespace {

constexpr double kDegree = std::numbers::pi / 180.0;
constexpr double kGreatestTilt_deg = 60.0;
constexpr double kLeastOff = 0.12; // of the picture's width, from its middle

QTransform turning(const model::Underlay& lay, QSizeF picture)
{
    return QTransform::fromTranslate(-picture.width() / 2.0, -picture.height() / 2.0) *
           QTransform().rotate(lay.turned_deg);
}

/// As a level camera would have seen what one that looks up by `tilt_deg` saw (K5).
QTransform levelling(double tilt_deg, double focal)
{
    const double s = std::sin(tilt_deg * kDegree);
    const double c = std::cos(tilt_deg * kDegree);
    return {1.0, 0.0, 0.0, 0.0, c, s / focal, 0.0, -focal * s, c};
}

} // namespace

double focal_px(QSizeF picture)
{
    constexpr double kFocal_mm = 28.0;
    const double diagonal_mm = std::hypot(36.0, 24.0);
    return kFocal_mm / diagonal_mm * std::hypot(picture.width(), picture.height());
}

QTransform straightening(const model::Underlay& lay, QSizeF picture)
{
    return turning(lay, picture) * levelling(lay.tilt_deg, focal_px(picture));
}

QTransform photoToCanvas(const model::Photo& photo, QSizeF picture, const SideFrame& frame)
{
    const auto& lay = *photo.underlay;
    const double scale = frame.pixelsPerMetre * *photo.metresPerPixel;
    return straightening(lay, picture) * QTransform::fromTranslate(-lay.foot_px.x, -lay.foot_px.y) *
           QTransform::fromScale(scale, scale) *
           QTransform::fromTranslate(frame.foot.x(), frame.foot.y());
}

model::Underlay keepingFoot(const model::Underlay& from, model::Underlay to, QSizeF picture)
{
    const QPointF pixel =
        straightening(from, picture).inverted().map(QPointF(from.foot_px.x, from.foot_px.y));
    const QPointF foot = straightening(to, picture).map(pixel);
    to.foot_px = {foot.x(), foot.y()};
    return to;
}

std::optional<model::Underlay> uprightBy(const model::Underlay& lay, QPointF a, QPointF b,
                                         QSizeF picture)
{
    const QPointF p = turning(lay, picture).map(a);
    const QPointF q = turning(lay, picture).map(b);
    if (QLineF(p, q).length() < 1.0)
        return std::nullopt;
    auto to = lay;
    if (std::abs(p.x() + q.x()) / 2.0 < kLeastOff * picture.width()) {
        const QPointF up = p.y() < q.y() ? p - q : q - p;
        to.turned_deg =
            std::remainder(lay.turned_deg - std::atan2(up.x(), -up.y()) / kDegree, 360.0);
    } else {
        const double cross = p.x() * q.y() - q.x() * p.y();
        to.tilt_deg = std::atan(focal_px(picture) * (q.x() - p.x()) / cross) / kDegree;
        if (!(std::abs(to.tilt_deg) <= kGreatestTilt_deg))
            return std::nullopt;
    }
    return keepingFoot(lay, to, picture);
}

std::optional<double> scaleBy(const model::Underlay& lay, QPointF a, QPointF b, double length_m,
                              QSizeF picture)
{
    const QTransform straight = straightening(lay, picture);
    const double apart = QLineF(straight.map(a), straight.map(b)).length();
    return apart < 1.0 ? std::nullopt : std::optional(length_m / apart);
}

} // namespace app
