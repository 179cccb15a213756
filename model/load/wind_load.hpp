#pragma once

#include "model/garden/place.hpp"
#include "model/load/pieces.hpp"
#include "model/load/statics.hpp"

#include <vector>

namespace model::load {

/// The wind that a tree stands in.
struct Wind {
    double gust_m_s{}; ///< 3-second gust at 10 m over open ground
    double airDensity_kg_m3{};
    Exposure exposure{};
    DragGroup dragGroup{};
    double leafShare{1.0}; ///< drag of the leafy parts over that in leaf
    /// Outline that each m2 of leaf has on the tree as it was sketched; 0: not known
    double outlinePerLeaf{};
};

/// Drag on a tree's pieces, and what is left of it where parts stand in each other's lee.
struct WindLoad {
    std::vector<std::vector<PieceDrag>> pieces; ///< for each limb, for each of its pieces
    /// For each limb: element n is the share of the summed drag on it and on the n outermost of
    /// the limbs that grow from it that their outline together, and their leaf, leave (L9).
    std::vector<std::vector<PerBearing>> share;
};

/// Drag by the law of the species' group at the gust of each piece's height, on outlines seen from
/// every direction.
[[nodiscard]] WindLoad windLoad(const Tree& tree, const LimbOrder& order,
                                const std::vector<LeafyBody>& bodies,
                                const std::vector<LimbPieces>& limbs, const Wind& wind);

} // namespace model::load
