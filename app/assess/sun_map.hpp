#pragma once

#include "model/light/surface.hpp"
#include "model/light/year_light.hpp"

#include <vector>

namespace app {

/// Direct sun over the whole garden on the growing season's mean day.
struct SunMap {
    model::light::MapGrid grid;
    std::vector<model::light::DayLight> points; ///< one for each of the grid's, sun hours only
    double open_h{};                            ///< under the open sky
};

} // namespace app
