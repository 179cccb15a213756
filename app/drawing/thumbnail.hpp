#pragma once

#include "app/drawing/drawing_palette.hpp"
#include "model/garden/tree.hpp"

#include <QSizeF>

class QPainter;

namespace app {

/// Draws one tree small, without words: its leaf, its wood and the ground; the wood that `before`
/// had and `shown` lacks is dashed. Both pictures of a pair come out in one scale if `before` is
/// the same.
/// \param bearing_deg  the way the gardener looks
void paintThumbnail(QPainter& painter, const model::Tree& before, const model::Tree& shown,
                    double bearing_deg, QSizeF canvas, const DrawingPalette& colours);

} // namespace app
