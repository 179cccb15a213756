#pragma once

#include "app/drawing/drawing_palette.hpp"
#include "app/drawing/side_scene.hpp"

class QPainter;

namespace app {

/// Draws the side view. The painter's font is the one for labels.
void paintSide(QPainter& painter, const SideScene& scene, const DrawingPalette& colours);

} // namespace app
