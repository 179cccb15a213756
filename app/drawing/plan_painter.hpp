#pragma once

#include "app/drawing/drawing_palette.hpp"
#include "app/drawing/plan_scene.hpp"

class QPainter;

namespace app {

/// Draws the plan. The painter's font is the one for labels.
void paintPlan(QPainter& painter, const PlanScene& scene, const DrawingPalette& colours);

} // namespace app
