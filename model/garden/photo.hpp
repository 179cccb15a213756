#pragma once

#include "model/garden/extras.hpp"
#include "model/geometry/vec3.hpp"

#include <optional>
#include <string>

namespace model {

/// How a picture lies under a sketch. Pixels count from the middle of the picture, x right, y down.
struct Underlay {
    Point2 foot_px{}; ///< of the straightened picture, that lies at the middle of the tree's base
    double turned_deg{}; ///< clockwise, to bring it upright, -180..180
    double tilt_deg{};   ///< how far the camera looked up, -60..60; below 0: down
    double opacity{0.6}; ///< 0 unseen .. 1 as it is
    Extras extras{};
    friend bool operator==(const Underlay&, const Underlay&) = default;
};

/// A picture of a tree: one that a sketch was drawn over, or one taken on a visit.
struct Photo {
    std::string file;                      ///< name relative to the garden document
    std::optional<double> metresPerPixel;  ///< scale of the straightened picture, once set
    std::optional<double> viewBearing_deg; ///< the way the camera looked
    std::string note;
    Extras extras;
    std::optional<Underlay> underlay{}; ///< blank: no sketch is drawn over it
    friend bool operator==(const Photo&, const Photo&) = default;
};

} // namespace model
