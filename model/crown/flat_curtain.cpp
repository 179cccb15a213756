#include "model/crown/flat_curtain.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace model {

FlatCurtain::FlatCurtain(const Curtain& curtain, Vec3 across)
    : u_(dot(curtain.a, across)), z_(curtain.a.z), radius_(curtain.radius_m), hang_(curtain.hang_m)
{
    double end = dot(curtain.b, across);
    rise_ = curtain.b.z - z_;
    if (u_ > end) {
        std::swap(u_, end);
        z_ = curtain.b.z;
        rise_ = -rise_;
    }
    run_ = end - u_;
    level_ = std::abs(rise_) < 1e-12;
    perRise_ = level_ ? 0.0 : 1.0 / rise_;
    lift_ = level_ ? 0.0 : radius_ * run_ / std::sqrt(run_ * run_ + rise_ * rise_);
}

double FlatCurtain::reach(double t, double height_m) const
{
    const double above = height_m - (z_ + t * rise_);
    const double off = std::max({0.0, above, -above - hang_});
    return std::sqrt(std::max(0.0, radius_ * radius_ - off * off));
}

std::optional<Interval> FlatCurtain::covered(double height_m) const
{
    const double above = height_m - z_;
    if (level_) {
        if (above > radius_ || above < -hang_ - radius_)
            return std::nullopt;
        const double both = reach(0.0, height_m);
        return Interval{u_ - both, u_ + run_ + both};
    }
    // The centres near enough to the line to reach it.
    const double t1 = (above - radius_) * perRise_;
    const double t2 = (above + radius_ + hang_) * perRise_;
    const double first = std::max(0.0, std::min(t1, t2));
    const double last = std::min(1.0, std::max(t1, t2));
    if (first > last)
        return std::nullopt;
    // The far ends lie where the outline's edge, parallel to the row of centres, meets the line.
    const double top = std::clamp((above - lift_) * perRise_, first, last);
    const double bottom = std::clamp((above + hang_ + lift_) * perRise_, first, last);
    const double left = rise_ > 0.0 ? top : bottom;
    const double right = rise_ > 0.0 ? bottom : top;
    return Interval{u_ + left * run_ - reach(left, height_m),
                    u_ + right * run_ + reach(right, height_m)};
}

} // namespace model
