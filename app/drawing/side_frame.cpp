#include "app/drawing/side_frame.hpp"

#include "model/geometry/angle.hpp"

#include <algorithm>

namespace app {
namespace {

// Pixels kept free around the tree.
constexpr double kBeside = 40.0;
constexpr double kGroundEdge = 6.0;
constexpr double kGroundRow = 25.0; // a bar and its name, as the painter draws them
constexpr double kLeastGround = 30.0;

double skyAbove(QSizeF canvas)
{
    return std::clamp(0.12 * canvas.height(), 16.0, 40.0);
}

/// The ground's section and the names in it: no more than a low drawing can spare.
double groundBelow(QSizeF canvas, int rows)
{
    return std::clamp(kGroundEdge + rows * kGroundRow, kLeastGround,
                      std::max(kLeastGround, 0.5 * canvas.height() - 80.0));
}

} // namespace

model::Vec3 SideFrame::look() const
{
    return model::bearingDirection(bearing_deg);
}

model::Vec3 SideFrame::across() const
{
    return model::bearingDirection(bearing_deg + 90.0);
}

QPointF SideFrame::toCanvas(model::Vec3 place_m) const
{
    return foot + pixelsPerMetre * QPointF(model::dot(place_m, across()), -place_m.z);
}

double SideFrame::depth_m(model::Vec3 place_m) const
{
    return model::dot(place_m, look());
}

model::Vec3 SideFrame::toPlace(QPointF point, double depth_m) const
{
    const QPointF off = (point - foot) / pixelsPerMetre;
    return off.x() * across() + depth_m * look() + model::Vec3{0.0, 0.0, -off.y()};
}

double reach_m(const model::Tree& tree)
{
    double reach = 0.0;
    for (const auto& limb : tree.limbs) {
        const double leaf = limb.foliage ? limb.foliage->radius_m : 0.0;
        for (const auto& station : limb.stations)
            reach = std::max(reach, model::norm(model::plan(station.position_m)) + leaf);
    }
    return reach;
}

SideFrame fittedSideFrame(const model::Tree& tree, double bearing_deg, QSizeF canvas,
                          int groundRows)
{
    const double ground = groundBelow(canvas, groundRows);
    const double height_m = std::max(2.0, model::height_m(tree));
    const double width_m = 2.0 * std::max(1.0, reach_m(tree));
    const double scale = std::min((canvas.height() - skyAbove(canvas) - ground) / height_m,
                                  (canvas.width() - 2.0 * kBeside) / width_m);
    return {bearing_deg, std::max(1.0, scale),
            QPointF(canvas.width() / 2.0, canvas.height() - ground)};
}

} // namespace app
