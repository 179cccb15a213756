#pragma once

#include "model/geometry/curtain.hpp"

#include <algorithm>

namespace model {

/// Distance from a point to the swept parallelogram, by search over its length: the slow way.
inline double distanceToSheet(const Curtain& curtain, Vec3 point)
{
    const auto at = [&](double t) {
        Vec3 nearest = between(curtain.a, curtain.b, t);
        nearest.z = std::clamp(point.z, nearest.z - curtain.hang_m, nearest.z);
        return norm(point - nearest);
    };
    double low = 0.0;
    double high = 1.0;
    for (int i = 0; i < 60; ++i) { // the distance to a convex shape is convex in t
        const double left = low + (high - low) / 3.0;
        const double right = high - (high - low) / 3.0;
        if (at(left) < at(right))
            high = right;
        else
            low = left;
    }
    return at((low + high) / 2.0);
}

} // namespace model
