#pragma once

#include "model/geometry/curtain.hpp"

#include <optional>

namespace model {

/// A curtain seen along a level direction: an upright row of centres thickened by its radius.
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

} // namespace model
