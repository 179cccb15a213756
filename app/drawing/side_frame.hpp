#pragma once

#include "model/garden/tree.hpp"

#include <QPointF>
#include <QSizeF>

namespace app {

/// The side view's camera: a gardener who looks at one tree in a compass bearing, level, from far
/// enough off that nothing is foreshortened by distance. Places are in the tree's frame.
struct SideFrame {
    double bearing_deg{};        ///< the way the gardener looks, clockwise from north
    double pixelsPerMetre{40.0}; ///< > 0
    QPointF foot{};              ///< where the middle of the tree's base is drawn

    [[nodiscard]] model::Vec3 look() const;   ///< away from the gardener, length one
    [[nodiscard]] model::Vec3 across() const; ///< to the gardener's right, length one
    [[nodiscard]] QPointF toCanvas(model::Vec3 place_m) const;
    /// How far a place lies beyond the tree's base; negative: nearer than it.
    [[nodiscard]] double depth_m(model::Vec3 place_m) const;
    /// The place drawn at a point of the canvas, in the upright plane at this depth.
    [[nodiscard]] model::Vec3 toPlace(QPointF point, double depth_m) const;

    friend bool operator==(const SideFrame&, const SideFrame&) = default;
};

/// The frame that shows all of the tree on a canvas, whichever way it is looked at, as large as
/// fits, with room beneath the ground line for so many rows of names of what lies there.
[[nodiscard]] SideFrame fittedSideFrame(const model::Tree& tree, double bearing_deg, QSizeF canvas,
                                        int groundRows = 3);

/// How far the tree reaches from its base on plan, leaf included, m.
[[nodiscard]] double reach_m(const model::Tree& tree);

} // namespace app
