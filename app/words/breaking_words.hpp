#pragma once

#include "app/words/wording.hpp"
#include "model/load/breaking_gust.hpp"

namespace app {

/// The gust in which a limb is likely to break, as a range in one sentence, with what to measure
/// to narrow it where that would help; empty for wood without strength.
[[nodiscard]] QString sentence(const model::load::BreakingGust& gust, const Wording& wording);

} // namespace app
