#pragma once

#include "app/words/wording.hpp"
#include "model/headroom/headroom.hpp"

namespace app {

/// Headroom over one strip in one or two sentences: what there is, what is needed, what is in the
/// way, and how far it comes down when the tree hangs at its heaviest.
[[nodiscard]] QString sentence(const model::headroom::StripHeadroom& headroom,
                               const Wording& wording);

/// "a ride-on mower", as in "enough for a ride-on mower".
[[nodiscard]] QString useWords(model::StripUse use);

} // namespace app
