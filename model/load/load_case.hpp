#pragma once

#include "model/load/limb_load.hpp"
#include "model/load/pieces.hpp"
#include "model/load/statics.hpp"
#include "model/load/wind_load.hpp"

#include <vector>

namespace model::load {

/// Everything that the limbs of one tree are reckoned from.
struct LoadCase {
    LimbOrder order;
    std::vector<LimbPieces> limbs;
    WindLoad wind;
    double wood_kg_m3{};
    double greenMor_Pa{};
    std::vector<Weight> weights; ///< of each limb and all that grows from it
    std::vector<DragSums> drags; ///< likewise, nothing taken off for lee
    /// For each limb: of its strength, what is left under its weight alone for as long as what
    /// hangs on it and beyond stays (L27).
    std::vector<double> standing;
    bool propped{}; ///< some limb rests on a prop
};

/// Cuts the tree into pieces, loads them, and sums the loads from the tips to the foot.
/// \throws std::domain_error  on a gust that is negative or not finite, or a tree that validate()
///         refuses
[[nodiscard]] LoadCase loadCase(const Tree& tree, const Foliation& foliation,
                                const Species& species, const Place& place, Exposure exposure,
                                const Conditions& conditions);

/// LoadCase::standing, from what hangs on the limbs.
[[nodiscard]] std::vector<double> standingFactors(const LimbOrder& order,
                                                  const std::vector<LimbPieces>& limbs);

/// Where the wind comes from: a direction of half a turn, or its opposite.
struct WindFrom {
    std::size_t bearing{};
    bool opposite{};
};
[[nodiscard]] double bearing_deg(WindFrom wind);

/// Loads beyond a place, with the wind in one direction or its opposite.
struct Beyond {
    Weight weight{};
    Drag drag{};
    double share{1.0}; ///< of the drag that is left in each other's lee
};

/// Loads beyond the start of each piece of a limb, and beyond its tip, with the laterals that join
/// right there.
[[nodiscard]] std::vector<Beyond> beyondPieces(const LoadCase& load, std::size_t limb,
                                               std::size_t bearing);

/// Loads beyond a place inside a piece. \param ends  from beyondPieces
[[nodiscard]] Beyond beyondWithin(const LoadCase& load, std::size_t limb, std::size_t piece,
                                  double along_m, const std::vector<Beyond>& ends,
                                  std::size_t bearing);

/// The weights beyond a place inside a piece, by kind. \param ofLimbs  from weightsByKind
[[nodiscard]] Weights weightsBeyond(const LoadCase& load, std::size_t limb, std::size_t piece,
                                    double along_m, const std::vector<Weights>& ofLimbs);

/// Weights of each limb and all that grows from it, by kind.
[[nodiscard]] std::vector<Weights> weightsByKind(const LoadCase& load);

/// What is asked of a section.
struct Asked {
    Vec3 weightMoment_Nm{};
    Vec3 windMoment_Nm{};
    SectionForces forces{};
};
[[nodiscard]] Asked askedAt(const Piece& piece, double along_m, const Beyond& beyond,
                            WindFrom wind);

/// Part of a moment that bends a limb of this direction.
[[nodiscard]] double bending_Nm(Vec3 moment_Nm, Vec3 direction);

/// The weight of a limb and all that grows from it. \pre  those of what grows from it are there
[[nodiscard]] Weight weightOfLimb(const LoadCase& load, std::size_t limb);

/// Sums the loads of a limb from its tip to its base and stops at the start of every piece:
/// atSection(piece, weight, drag, share).
template <typename AtSection>
void walkToBase(const LoadCase& load, std::size_t limb, AtSection atSection)
{
    const auto& cut = load.limbs[limb];
    const auto& children = load.order.children[limb];
    Weight weight;
    DragSums drag;
    std::size_t outermost = 0;
    const auto takeChildrenAt = [&](std::size_t piece) {
        for (; outermost < children.size(); ++outermost) {
            const std::size_t child = children.size() - 1 - outermost;
            if (cut.joinsAt[child] != piece)
                break;
            add(weight, load.weights[children[child]]);
            add(drag, load.drags[children[child]]);
        }
    };
    takeChildrenAt(cut.pieces.size());
    for (std::size_t i = cut.pieces.size(); i-- > 0;) {
        add(weight, weightOf(cut.pieces[i], load.wood_kg_m3));
        add(drag, load.wind.pieces[limb][i]);
        takeChildrenAt(i);
        atSection(i, weight, drag, load.wind.share[limb][outermost]);
    }
}

} // namespace model::load
