#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/tree.hpp"
#include "model/load/bending.hpp"
#include "model/load/conditions.hpp"
#include "model/species/species.hpp"

#include <cstddef>
#include <vector>

namespace model::load {

/// How far one limb hangs below where it was drawn.
struct LimbSag {
    std::size_t limb{}; ///< index into Tree::limbs
    double tip_m{};     ///< of its tip; below 0: the tip has risen
    double most_m{};    ///< of the place that sinks most, >= 0
    double mostAt_m{};  ///< where that is, along the limb
    double prop_N{};    ///< what its props push up with, together
};

/// How a tree hangs under what its sketch was drawn without.
struct Sag {
    std::vector<LimbSag> limbs; ///< one for each limb, in Tree::limbs order
    Tree tree;                  ///< as it hangs: stations moved, nothing else but the height that
                                ///< shoots were lifted to, which sinks with the shoots
    bool settled{true};         ///< false: some wood bends past all reckoning
};

/// How far below its drawn place a limb's lowest-sunk station hangs, m, >= 0.
[[nodiscard]] double largestDrop_m(const Limb& drawn, const Limb& sagging);

/// The tree under rain, crop or ice. It was drawn as it stands dry, in leaf and without its crop
/// (L29): so that is where it sags from. The gust is not used; leafless it rises a little.
/// \throws std::domain_error  on a tree that validate() refuses, or ice of no thickness
[[nodiscard]] Sag sagUnder(const Tree& tree, const Foliation& foliation, const Species& species,
                           const Conditions& conditions);

/// The same as near as can be measured, and sooner, for a tree that is drawn on again and again.
/// \param rest  where it hung last, which is told anew; empty at first
[[nodiscard]] Sag sagUnder(const Tree& tree, const Foliation& foliation, const Species& species,
                           const Conditions& conditions, Rest& rest);

/// What hangs on a tree at its heaviest without frost: wet, in leaf, and in fruit.
inline constexpr Conditions kHeaviest{
    .gust_m_s = 0.0, .inLeaf = true, .inFruit = true, .inRain = true, .glaze_m = 0.0};

/// How far a tree springs back when cuts take weight off it: `after` is `before` with limbs gone,
/// shortened, thinned or lifted, and nothing moved. Both dry, in leaf, without crop.
/// \return of the limbs of `after`; sags below 0 are rises
[[nodiscard]] Sag springBack(const Tree& before, const Tree& after, const Foliation& foliation,
                             const Species& species);

} // namespace model::load
