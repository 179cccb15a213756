#pragma once

#include "app/words/wording.hpp"
#include "model/advice/suggestion.hpp"

#include <vector>

namespace app {

/// One figure that cuts change, in people's units.
struct BeforeAfter {
    QString what;
    QString before;
    QString after;
    QString wanted; ///< may be empty
};

/// Headroom over each strip that the tree hangs over, dry and at its heaviest, the goals that are
/// measured, and the leaf.
[[nodiscard]] std::vector<BeforeAfter> beforeAndAfter(const model::advice::Suggestion& suggestion,
                                                      const Wording& wording);

} // namespace app
