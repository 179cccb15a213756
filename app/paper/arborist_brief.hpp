#pragma once

#include "app/paper/sheet_parts.hpp"

namespace app {

/// One page for each tree to hand to an arborist: what the tree is, what was seen of it, what
/// stands and runs below, what is wanted and why; and what to ask of who does the work.
[[nodiscard]] Sheet arboristBrief(const PaperReport& report, const model::Tables& tables,
                                  const Units& units);

} // namespace app
