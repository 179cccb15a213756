#pragma once

#include "app/format/units.hpp"

namespace app {

/// Pixels around what is drawn within which a press takes hold of it.
inline constexpr double kReach = 14.0;

/// How far an arrow key moves what is held: 5 cm or 2 in.
[[nodiscard]] inline double smallStep_m(const Units& units)
{
    return units.measures() == Measures::unitedStates ? 0.0508 : 0.05;
}

} // namespace app
