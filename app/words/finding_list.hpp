#pragma once

#include "app/words/wording.hpp"
#include "model/advice/rule.hpp"

#include <vector>

namespace app {

/// Findings as sentences, in their order, each thing said once: limbs that are asked for too much
/// and strips that people use are told in one sentence each, and a wound that is large for a
/// species that heals poorly is not called large as well.
[[nodiscard]] QStringList sentences(const std::vector<model::advice::Finding>& findings,
                                    const Wording& wording);

} // namespace app
