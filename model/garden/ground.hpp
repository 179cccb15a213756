#pragma once

#include "model/garden/extras.hpp"
#include "model/geometry/vec3.hpp"

#include <optional>

namespace model {

/// The ground of a garden that lies on a hillside: one plane.
struct Slope {
    double gradient{};    ///< fall per distance on plan, 0..1; 0.1 is one metre in ten
    double fallsTo_deg{}; ///< the bearing that water runs to, 0..360
    Extras extras;
    friend bool operator==(const Slope&, const Slope&) = default;
};

/// The ground's plane, through the origin of the garden's frame. Without a slope it is level.
class Ground {
public:
    Ground() = default;
    explicit Ground(const std::optional<Slope>& slope);

    /// Height of the ground at a place on plan, m.
    [[nodiscard]] double height_m(Point2 at) const { return rise_.x * at.x + rise_.y * at.y; }
    /// The place on the ground, or `above_m` over it.
    [[nodiscard]] Vec3 at(Point2 place, double above_m = 0.0) const
    {
        return {place.x, place.y, height_m(place) + above_m};
    }
    /// Across the ground, upwards, unit.
    [[nodiscard]] Vec3 normal() const { return normal_; }
    [[nodiscard]] bool isLevel() const { return rise_ == Point2{}; }

private:
    Point2 rise_{}; ///< per metre east and per metre north
    Vec3 normal_{0.0, 0.0, 1.0};
};

} // namespace model
