#pragma once

#include "model/advice/tool.hpp"
#include "model/geometry/vec3.hpp"

#include <string>

namespace model::advice {

/// One length that a limb is cut into, as it comes down.
struct Piece {
    std::string limb;    ///< id of the limb that is sawn through
    double at_m{};       ///< along it from its union, where
    Vec3 cut_m{};        ///< the same place, tree frame
    double diameter_m{}; ///< of the wood there; 0: shoots, which come down one by one
    double length_m{};   ///< from the cut to the tip that lies farthest along the wood
    double slope_deg{};  ///< how the piece rises from the cut to that tip, -90..90
    double mass_kg{};    ///< green, with leaf and crop
    double logs_m3{};    ///< of it, solid wood of kLog_m and over
    double logs_kg{};
    Tool tool{};
    bool threeCuts{};      ///< thick enough for its bark to tear when sawn from above in one go
    double dropRadius_m{}; ///< about the place under the cut: where it may come to lie
};

} // namespace model::advice
