#pragma once

#include "model/load/bending.hpp"

namespace model::load {

/// A piece of the drawn, unbent tree.
[[nodiscard]] BentShape::BentPiece asDrawn(const Piece& piece);

/// All of it; its props push nothing.
[[nodiscard]] BentShape drawnShape(const ElasticTree& tree);

/// Moments of all that bears beyond the sections of every piece, about those sections, N m: what
/// weighs on the bent pieces, less the pushes of the shape's props (L19).
[[nodiscard]] TreeSections momentsIn(const ElasticTree& tree, const BentShape& shape,
                                     const TreeWeight& weight);
/// The same into room that was used before.
void momentsIn(const ElasticTree& tree, const BentShape& shape, const TreeWeight& weight,
               TreeSections& moments);

} // namespace model::load
