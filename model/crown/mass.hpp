#pragma once

#include "model/crown/foliage.hpp"

#include <vector>

namespace model {

/// What a limb by itself (without the limbs that grow from it) weighs, kg green.
struct LimbMass {
    double wood_kg{};
    double leaf_kg{};
    double twig_kg{};
    double fruit_kg{};
    [[nodiscard]] double total_kg() const { return wood_kg + leaf_kg + twig_kg + fruit_kg; }
};

/// Volume of the wood of a limb, a row of cone frustums, m3 over bark.
[[nodiscard]] double woodVolume_m3(const Limb& limb);

/// Mass of each limb, in Tree::limbs order. `inLeaf` false: no leaves, the twigs stay.
[[nodiscard]] std::vector<LimbMass> limbMasses(const Tree& tree, const Foliation& foliation,
                                               const Species& species, bool inLeaf = true);

} // namespace model
