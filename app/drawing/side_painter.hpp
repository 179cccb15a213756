#pragma once

#include "app/drawing/drawing_palette.hpp"
#include "app/drawing/kept_pictures.hpp"
#include "app/drawing/side_scene.hpp"

#include <QBrush>
#include <QPen>

class QPainter;

namespace app {

/// How the limbs were painted last, for a window that paints the side view again and again.
struct SidePictures {
    struct LeafLook {
        QPainterPath bodies;
        QPainterPath dabs;
        QColor body;
        QColor dab;     ///< invalid: none
        QColor outline; ///< invalid: none
        friend bool operator==(const LeafLook&, const LeafLook&) = default;
    };
    struct WoodLook {
        QPainterPath wood;
        QBrush fill;
        QPen edge;
        QColor halo; ///< invalid: none
        friend bool operator==(const WoodLook&, const WoodLook&) = default;
    };
    struct ShootsLook {
        std::vector<QLineF> shoots;
        QColor colour;
        friend bool operator==(const ShootsLook&, const ShootsLook&) = default;
    };
    KeptPictures<LeafLook> leaf;
    KeptPictures<WoodLook> wood;
    KeptPictures<ShootsLook> shoots;
};

/// Draws the side view. The painter's font is the one for labels.
/// \param pictures  null: all is painted anew
void paintSide(QPainter& painter, const SideScene& scene, const DrawingPalette& colours,
               SidePictures* pictures = nullptr);

} // namespace app
