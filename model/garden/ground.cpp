#include "model/garden/ground.hpp"

#include "model/geometry/angle.hpp"

namespace model {

Ground::Ground(const std::optional<Slope>& slope)
{
    if (!slope || slope->gradient == 0.0)
        return;
    const Vec3 downhill = bearingDirection(slope->fallsTo_deg);
    rise_ = -slope->gradient * plan(downhill);
    const Vec3 across{-rise_.x, -rise_.y, 1.0};
    normal_ = (1.0 / norm(across)) * across;
}

} // namespace model
