#pragma once

#include "app/words/wording.hpp"
#include "model/load/breaking_gust.hpp"

namespace app {

/// The gust in which a limb is likely to break, as a range in one sentence, with the force of the
/// wind that brings it; empty for wood without strength.
[[nodiscard]] QString sentence(const model::load::BreakingGust& gust, const Wording& wording);

/// The same range in fewer words, for a line under a drawing.
[[nodiscard]] QString shortRange(const model::load::BreakingGust& gust, const Units& units);

/// What the range of a limb's breaking gust comes from, the greatest first: "...the strength of its
/// wood and union (57 %), ...".
[[nodiscard]] QString rangeCauses(const model::load::BreakingGust& gust, const Wording& wording);

/// What the gardener could measure to narrow the range of this limb, or that nothing would.
[[nodiscard]] QString whatToMeasure(const model::load::BreakingGust& gust, const Wording& wording);

/// The same for the whole tree, of the limbs named: which girths to tape first; empty if that would
/// hardly help.
[[nodiscard]] QString girthsToTape(const std::vector<model::load::BreakingGust>& gusts,
                                   const std::vector<std::size_t>& limbs, const Wording& wording);

} // namespace app
