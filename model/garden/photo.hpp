#pragma once

#include "model/garden/extras.hpp"

#include <optional>
#include <string>

namespace model {

/// A picture of a tree: one that a sketch was drawn over, or one taken on a visit.
struct Photo {
    std::string file;                      ///< name relative to the garden document
    std::optional<double> metresPerPixel;  ///< scale, once two clicks have set it
    std::optional<double> viewBearing_deg; ///< the way the camera looked
    std::string note;
    Extras extras;
    friend bool operator==(const Photo&, const Photo&) = default;
};

} // namespace model
