#pragma once

#include "tests/model/load/samples.hpp"

namespace model::load {

inline constexpr double kLimbs = 60.0;
inline constexpr double kStations = 12.0;

/// Draws every limb with twelve stations.
inline Tree finelyDrawn(Tree tree)
{
    for (auto& limb : tree.limbs) {
        const double length = length_m(limb);
        std::vector<Station> stations;
        for (double i = 0.0; i < kStations; i += 1.0) {
            const auto point = axisPoint(limb, length * i / (kStations - 1.0));
            stations.push_back({point.position_m, point.diameter_m, {}});
        }
        limb.stations = stations;
    }
    return tree;
}

/// 60 limbs: a stem, 11 scaffolds, 44 laterals on them, and four more on the stem.
inline Tree sixtyLimbs()
{
    Tree drawn = spreading(5, 11, 4);
    for (int i = 0; i < 4; ++i)
        drawn.limbs.push_back(leafy(growing(straight(std::to_string(100 + i), {0, 0, 3.4},
                                                     {0.3 * i, 1.0 - 0.4 * i, 8.0}, 0.1, 0.02),
                                            "stem", 3.4),
                                    1.0, 0.6));
    return finelyDrawn(std::move(drawn));
}

} // namespace model::load
