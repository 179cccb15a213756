#include "app/round/round_camera.hpp"

#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

constexpr double kAir = 1.04; // around what is fitted

double tanHalfView()
{
    return std::tan(model::radians(RoundCamera::kFieldOfView_deg / 2.0));
}

} // namespace

model::Vec3 RoundCamera::look() const
{
    const double down = model::radians(down_deg);
    return std::cos(down) * model::bearingDirection(bearing_deg) +
           model::Vec3{0.0, 0.0, -std::sin(down)};
}

model::Vec3 RoundCamera::right() const
{
    return model::bearingDirection(bearing_deg + 90.0);
}

model::Vec3 RoundCamera::up() const
{
    return cross(right(), look());
}

model::Vec3 RoundCamera::eye_m() const
{
    return target_m - distance_m * look();
}

Sight RoundCamera::sight(QPointF point) const
{
    const double perPixel = 2.0 * tanHalfView() / canvas.height();
    const double aside = (point.x() - canvas.width() / 2.0) * perPixel;
    const double above = (canvas.height() / 2.0 - point.y()) * perPixel;
    const model::Vec3 direction = look() + aside * right() + above * up();
    return {eye_m(), (1.0 / norm(direction)) * direction};
}

std::optional<QPointF> RoundCamera::toCanvas(model::Vec3 place_m) const
{
    const model::Vec3 off = place_m - eye_m();
    const double ahead = dot(off, look());
    if (!(ahead > 0.01 * distance_m))
        return std::nullopt;
    const double pixels = canvas.height() / (2.0 * tanHalfView() * ahead);
    return QPointF(canvas.width() / 2.0 + dot(off, right()) * pixels,
                   canvas.height() / 2.0 - dot(off, up()) * pixels);
}

double RoundCamera::metresPerPixel() const
{
    return 2.0 * tanHalfView() * distance_m / canvas.height();
}

RoundCamera fitted(RoundCamera camera, model::Vec3 middle_m, double radius_m)
{
    const double narrower = std::min(1.0, camera.canvas.width() / camera.canvas.height());
    const double half = std::atan(tanHalfView() * narrower);
    camera.target_m = middle_m;
    camera.distance_m = kAir * radius_m / std::sin(half);
    return camera;
}

} // namespace app
