#pragma once

#include "app/drawing/drawing_palette.hpp"

namespace app {

/// Colours of the drawings on paper: each stays apart from its neighbours in grey as well.
[[nodiscard]] DrawingPalette paperPalette();

} // namespace app
