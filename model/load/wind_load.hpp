#pragma once

#include "model/crown/silhouette.hpp"
#include "model/garden/place.hpp"
#include "model/load/pieces.hpp"
#include "model/load/statics.hpp"
#include "model/load/wind.hpp"

#include <vector>

namespace model::load {

/// The wind that a tree stands in.
struct Wind {
    double gust_m_s{}; ///< 3-second gust at 10 m over open ground
    double airDensity_kg_m3{};
    Exposure exposure{};
    DragGroup dragGroup{};
    double leafShare{1.0}; ///< drag of the leafy parts over that in leaf
};

/// What the lee of parts for each other depends on (L9): sums over pieces, from each direction.
struct LeeSums {
    PerBearing leaf_N{};     ///< drag on leafy pieces
    PerBearing wood_N{};     ///< drag on bare ones
    PerBearing outline_m2{}; ///< of single leafy pieces
    PerBearing dense_m2{};   ///< outline times relative density
    double leaf_m2{};        ///< leaf area
};
void add(LeeSums& whole, const LeeSums& part);

/// Drag on a tree's pieces, and what is left of it where parts stand in each other's lee.
struct WindLoad {
    std::vector<std::vector<PieceDrag>> pieces; ///< for each limb, for each of its pieces
    /// For each limb: element n is what the limb itself and the n outermost of the limbs that grow
    /// from it sum up to.
    std::vector<std::vector<LeeSums>> sums;
    /// Likewise: the share of that drag that their outline together, and their leaf, leave (L9).
    std::vector<std::vector<PerBearing>> share;
    /// Likewise: their outline together over the sum of their single outlines.
    std::vector<std::vector<PerBearing>> outlineLeft;
    /// Outline that each m2 of leaf has on the tree as it was sketched; 0: not known
    double outlinePerLeaf{};
};

/// Drag on the pieces of one limb by the law of the species' group at the gust of each piece's
/// height, on outlines seen from every direction.
[[nodiscard]] std::vector<PieceDrag> dragOnPieces(const std::vector<Piece>& pieces,
                                                  const Wind& wind);

/// What the leaf leaves of the drag on leafy pieces: no more for each m2 of it than the crown has
/// (L9). Infinite where the crown's is not known.
[[nodiscard]] double leafCap(const LeeSums& sums, double outlinePerLeaf, std::size_t bearing);

/// WindLoad::sums of one limb. \pre  those of the limbs that grow from it are there
[[nodiscard]] std::vector<LeeSums> leeSums(const WindLoad& load, const LimbOrder& order,
                                           const std::vector<Piece>& pieces, std::size_t limb);

/// LeeSums::leaf_m2 of one limb's sums, all else in them being as before. \pre  as leeSums()
void sumLeaf(WindLoad& load, const LimbOrder& order, const std::vector<Piece>& pieces,
             std::size_t limb);

/// WindLoad::share and outlineLeft of one limb, from its sums.
/// \param silhouettes  along every direction reckoned with
void leaveLee(WindLoad& load, const Silhouettes& silhouettes, std::size_t limb);

} // namespace model::load
