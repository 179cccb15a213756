#pragma once

#include "model/garden/cut.hpp"
#include "model/load/breaking_gust.hpp"
#include "model/load/load_study.hpp"

#include <vector>

namespace model::load {

/// What a cut takes off one limb, for each percent of the tree's leaf that goes with it.
struct LimbRelief {
    std::size_t limb{};    ///< index into Tree::limbs
    double moment_Nm{};    ///< of bending, at the place that governs the limb
    double utilisation{};  ///< 0.01 is a hundredth of its strength
    double breaking_m_s{}; ///< that its breaking gust (P50) gains; 0 where it is not known
};

/// What one cut buys.
struct CutRelief {
    std::size_t cut{};             ///< index into Tree::limbs: the limb that is cut
    CutKind kind{};                ///< thinning of its own shoots, or its removal
    double leafShare{};            ///< of the tree's leaf, that goes with the whole of it
    double base_Nm{};              ///< off the stem's foot, for each percent of the leaf
    std::vector<LimbRelief> limbs; ///< those that it relieves, nearest the stem last
};

/// What thinning each limb's own shoots buys: derivatives at the first shoot (L31, L32). Exact for
/// moment and utilisation at the places that govern; cheap, to be asked while a limb is dragged.
/// Limbs without leaf of their own are left out.
/// \param load      the tree's loads at the gust asked about
/// \param breaking  its limbs at the reference gust; null: breaking gusts are not asked for
[[nodiscard]] std::vector<CutRelief>
thinningReliefs(const Tree& tree, const Foliation& foliation, const Species& species,
                const Conditions& conditions, const LoadStudy& load, const LoadCase* reference,
                const BreakingLimbs* breaking);

/// What taking off each limb but the stem buys, with all that grows from it: the loads of the tree
/// after the cut against those before, for each percent of leaf (L33). Limbs that take no leaf with
/// them are left out, for they buy nothing for any.
/// \param withGusts  breaking gusts too, at a hundred times the cost
[[nodiscard]] std::vector<CutRelief> removalReliefs(const Tree& tree, const Foliation& foliation,
                                                    const Species& species, const Place& place,
                                                    Exposure exposure, const Conditions& conditions,
                                                    bool withGusts = true);

/// Both, thinnings first, with breaking gusts.
[[nodiscard]] std::vector<CutRelief> allReliefs(const Tree& tree, const Foliation& foliation,
                                                const Species& species, const Place& place,
                                                Exposure exposure, const Conditions& conditions);

} // namespace model::load
