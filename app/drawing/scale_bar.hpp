#pragma once

#include "app/format/units.hpp"

namespace app {

/// The longest of 1, 2, 5, 10, ... of the reader's units (metres or feet) that is drawn no longer
/// than `mostPixels`, in metres.
[[nodiscard]] double scaleBarLength_m(double pixelsPerMetre, double mostPixels, const Units& units);

} // namespace app
