#pragma once

#include "app/drawing/drawing_palette.hpp"
#include "app/format/units.hpp"
#include "model/light/year_light.hpp"

#include <QSizeF>

class QPainter;

namespace app {

/// A year of sun on one surface: for each month a bar for now and, if there is one, a hatched bar
/// for after the cuts, each with its hours, and the line of what the plant needs.
struct MonthBars {
    model::light::SurfaceLight now;
    const model::light::SurfaceLight* after{}; ///< null: no second bar
    std::optional<double> needed_h;
};

void paintMonthBars(QPainter& painter, QSizeF canvas, const MonthBars& bars, const Units& units,
                    const DrawingPalette& colours);

} // namespace app
