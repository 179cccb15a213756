#pragma once

#include "model/garden/tree.hpp"

namespace model::sketch {

/// Gives every station its thickness by the pipe model (Shinozaki et al. 1964): the wood's section
/// is in proportion to the leaf beyond it (docs/methods/sketch.md, K2). Leaf is counted by the
/// volume by which leafy bodies share it (docs/methods/crown.md, C2); below the crown the stem is
/// as thick throughout, with a swell of the butt to the ground. A tip is as thick as a pencil, and
/// no limb is thicker than the one it grows from.
/// \param tree  limbs with their stations and leaf; thicknesses are overwritten
/// \param stemDiameter_m  where stemDiameter_m() reads it, > 0
/// \throws std::domain_error  on a tree without leaf, or as limbOrder() does
void thickenByLeaf(Tree& tree, double stemDiameter_m);

/// The same for one limb and, where those are too thin to carry it, for the limbs beneath it. Wood
/// is only made thicker, only where its thickness is a guess, and not where stemDiameter_m() reads
/// it. A tree without leaf is left as it is.
/// \param limb  index into Tree::limbs
void thickenLimbByLeaf(Tree& tree, std::size_t limb);

} // namespace model::sketch
