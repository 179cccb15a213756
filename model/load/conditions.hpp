#pragma once

#include "model/load/wind.hpp"

namespace model::load {

/// What the tree is loaded with, besides its own wood.
struct Conditions {
    double gust_m_s{}; ///< 3-second gust at 10 m over open ground; 0: still air
    bool inLeaf{true};
    bool inFruit{true}; ///< the limbs' crop hangs
    bool inRain{false}; ///< leaf and twigs hold all the rain they can (L24)
    double glaze_m{};   ///< radial thickness of glaze ice on wood, twigs and leaf (L25), >= 0
    double air_C{kStandardAir_C}; ///< temperature of the air: cold air presses harder (L1)
    friend bool operator==(const Conditions&, const Conditions&) = default;
};

} // namespace model::load
