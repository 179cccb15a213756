#pragma once

#include "model/load/pieces.hpp"
#include "model/load/stiffness.hpp"
#include "model/load/turn.hpp"

#include <array>
#include <cstddef>
#include <vector>

namespace model::load {

/// What weighs on a piece, at two places along it: in its inner and in its outer half.
struct PieceWeight {
    double inner_kg{};
    double inner_m{}; ///< from the start of the piece
    double outer_kg{};
    double outer_m{};
};
/// For each limb, for each of its pieces.
using TreeWeight = std::vector<std::vector<PieceWeight>>;

/// A place that a prop holds up: the end of a piece.
struct PropPlace {
    std::size_t limb{};
    std::size_t piece{};
};

/// A tree's limbs as elastic bars that are held at the foot of the stem and joined without give.
struct ElasticTree {
    const LimbOrder& order;
    const std::vector<LimbPieces>& limbs;
    std::vector<double> stiffness_Pa; ///< of each limb's wood, creep in it
    std::vector<PropPlace> props{};
    double twistToBend{kTwistToBend}; ///< stiffness in bending over that in torsion
};

/// A tree's limbs, bent.
struct BentShape {
    struct BentPiece {
        Vec3 start_m{};
        Vec3 middle_m{};
        Vec3 end_m{};
        Turn atStart{}; ///< from the drawn to the bent directions
        Turn atEnd{};
    };
    std::vector<std::vector<BentPiece>> limbs;
    std::vector<double> push_N; ///< of each prop, >= 0
    bool settled{true};         ///< false: no rest was found; weight outgrows stiffness
};

/// A vector at three sections of a piece: its start, middle and end.
using Sections = std::array<Vec3, 3>;
/// For each limb, for each of its pieces.
using TreeSections = std::vector<std::vector<Sections>>;

/// Where a bent tree came to rest, for one like it to start from.
struct Rest {
    /// By how much the inner and outer half of each piece turned, for each limb.
    std::vector<std::vector<std::array<Vec3, 2>>> turns_rad;
    std::vector<double> push_N; ///< of each prop
};

/// The shape a tree takes when what weighs on it changes from `drawn`, in which it has the drawn
/// shape and its props bear nothing, to `now` (L29, L30). Not limited to small bending.
[[nodiscard]] BentShape bend(const ElasticTree& tree, const TreeWeight& drawn,
                             const TreeWeight& now);

/// The same, as near to rest as that and sooner there, if the tree is nearly that of `rest`; else
/// it starts from the drawn shape. \param rest  may be empty; afterwards it is that of this tree
[[nodiscard]] BentShape bend(const ElasticTree& tree, const TreeWeight& drawn,
                             const TreeWeight& now, Rest& rest);

/// What each prop pushes up with after the same change, N, bending being small (L30).
[[nodiscard]] std::vector<double> propPushes_N(const ElasticTree& tree, const TreeWeight& drawn,
                                               const TreeWeight& now);

} // namespace model::load
