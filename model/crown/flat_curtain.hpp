#pragma once

#include "model/geometry/curtain.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace model {

/// A curtain seen along a level direction: an upright row of centres thickened by its radius. In
/// line, for a tree asks it some ten thousand times.
class FlatCurtain {
public:
    /// \param across  level, square to the direction of sight, of length one
    FlatCurtain(const Curtain& curtain, Vec3 across);

    /// The stretch of a level line that it covers, along `across`; nothing if it doesn't meet the
    /// line. Closed form.
    [[nodiscard]] std::optional<Interval> covered(double height_m) const;

private:
    [[nodiscard]] double reach(double t, double height_m) const;
    double u_{}; ///< the left end of the row of centres
    double z_{};
    double run_{}; ///< from there to its right end, >= 0
    double rise_{};
    double radius_{};
    double hang_{};
    bool level_{};
    double perRise_{};
    double lift_{}; ///< how far above a centre the outline's sloping edge touches its circle
};

inline FlatCurtain::FlatCurtain(const Curtain& curtain, Vec3 across)
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

inline double FlatCurtain::reach(double t, double height_m) const
{
    const double above = height_m - (z_ + t * rise_);
    const double off = std::max({0.0, above, -above - hang_});
    return std::sqrt(std::max(0.0, radius_ * radius_ - off * off));
}

inline std::optional<Interval> FlatCurtain::covered(double height_m) const
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
