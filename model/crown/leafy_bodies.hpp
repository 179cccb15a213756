#pragma once

#include "model/garden/tree.hpp"
#include "model/geometry/curtain.hpp"

#include <vector>

namespace model {

/// One piece of a limb's leafy part, between two stations.
struct LeafyBody {
    std::size_t limb{}; ///< index into Tree::limbs
    Curtain solid{};    ///< tree frame: metres from the base of the stem
    double from_m{};    ///< along the limb
    double to_m{};
    double density{1.0}; ///< leaf per volume relative to the tree's own medium density
};

/// Leaf per volume of a class relative to 'medium'. Assumed (docs/methods/crown.md).
[[nodiscard]] double relativeDensity(FoliageDensity density);

/// The leafy bodies of a tree, limb by limb, base first. Hanging shoots end at the ground, or at
/// the height they were lifted to; where that cuts them short, a sloping piece of limb is drawn as
/// several bodies so that the hem is level to within 0.3 m.
[[nodiscard]] std::vector<LeafyBody> leafyBodies(const Tree& tree);

/// Appends those of one limb. \param index  what to call it
void appendLeafyBodies(const Limb& limb, std::size_t index, std::vector<LeafyBody>& bodies);

/// The volume by which a body takes part in sharing out the tree's leaf, m3: its section times its
/// length, without the round ends, so that drawing a limb with more stations changes nothing.
[[nodiscard]] double sharingVolume_m3(const LeafyBody& body);

/// The wood of a limb as solids: one capsule for each stretch, as thick as its thicker end.
[[nodiscard]] std::vector<Curtain> woodSolids(const Limb& limb);

} // namespace model
