#pragma once

#include "app/words/wording.hpp"
#include "model/advice/rule.hpp"

namespace app {

/// A rule's finding as one full sentence for a gardener, with both values in the listener's units.
[[nodiscard]] QString sentence(const model::advice::Finding& finding, const Wording& wording);

} // namespace app
