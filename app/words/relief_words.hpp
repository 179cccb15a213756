#pragma once

#include "app/words/wording.hpp"
#include "model/load/relief.hpp"

#include <vector>

namespace app {

/// A cut and what it buys on one limb.
struct CutForLimb {
    const model::load::CutRelief* cut{};
    const model::load::LimbRelief* relief{};
};

/// The cuts that relieve a limb, the one first that frees most of its strength for the leaf it
/// takes. Left out: cuts of more than `allowance`, as a share of the tree's leaf, and cuts that
/// free less than a thousandth of its strength for each percent of leaf.
[[nodiscard]] std::vector<CutForLimb>
bestForLimb(const std::vector<model::load::CutRelief>& reliefs, std::size_t limb, double allowance);

/// What relieves a limb most for the leaf it costs, the best two; empty: nothing does.
[[nodiscard]] QString sentence(const std::vector<CutForLimb>& best, const Wording& wording);

} // namespace app
