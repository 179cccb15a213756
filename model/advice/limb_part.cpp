#include "model/advice/limb_part.hpp"

#include "model/garden/tree.hpp"

#include <algorithm>

namespace model::advice {

Limb limbPart(const Limb& limb, double from_m, double to_m)
{
    Limb piece = limb;
    piece.stations = stretch(limb, from_m, to_m);
    if (piece.foliage) {
        piece.foliage->from_m = std::max(0.0, limb.foliage->from_m - from_m);
        if (piece.foliage->from_m >= to_m - from_m)
            piece.foliage.reset();
    }
    return piece;
}

double ownLeaf_m2(const Limb& limb, const Foliation& foliation)
{
    Tree alone;
    alone.limbs = {limb};
    double leaf = 0.0;
    for (const auto& body : leafyBodies(alone))
        leaf += leafArea_m2(body, foliation);
    return leaf;
}

} // namespace model::advice
