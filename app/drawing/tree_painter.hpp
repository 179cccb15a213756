#pragma once

#include "app/drawing/side_painter.hpp"

namespace app {

/// Paints the tree itself on the side view, layer by layer; what stands around it and what is
/// written beside it, side_painter.cpp.
class TreePainter {
public:
    TreePainter(QPainter& painter, const SideScene& scene, const DrawingPalette& colours,
                SidePictures& pictures);

    void leaves() const;
    void gone() const; ///< the wood that the suggested cuts take
    void limbs() const;
    void shoots() const;

private:
    /// The part of a rectangle that is seen, with room for pens around it.
    [[nodiscard]] QRectF seenPart(const QRectF& bounds, double around) const;

    QPainter& p_;
    const SideScene& scene_;
    const DrawingPalette& c_;
    SidePictures& pictures_;
};

} // namespace app
