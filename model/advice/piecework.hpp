#pragma once

#include "model/advice/piece.hpp"
#include "model/crown/foliage.hpp"
#include "model/garden/cut.hpp"
#include "model/garden/tree.hpp"
#include "model/species/species.hpp"

#include <vector>

namespace model::advice {

/// The lengths that the part a cut takes off is sawn into, in working order: from the tips inwards,
/// the wound on the tree last (docs/methods/advice.md, A9). None is heavier than one person holds
/// or longer than a person handles, unless the place where it would have to be sawn is out of
/// reach from the ground; then it is sawn at the first place inwards that is not.
/// Shoots of a lifting or a thinning are one piece.
/// \pre  the cut names a limb of the tree and lies along it
[[nodiscard]] std::vector<Piece> pieces(const Tree& tree, const Cut& cut,
                                        const Foliation& foliation, const Species& species);

/// Lifting: the longest shoot that comes off, m. Else 0.
[[nodiscard]] double shootLength_m(const Tree& tree, const Cut& cut);

/// Height above the ground of the highest shoot that a lifting or a thinning cuts, m.
[[nodiscard]] double shootHeight_m(const Tree& tree, const Cut& cut);

} // namespace model::advice
