#pragma once

#include "app/paper/sheet_parts.hpp"

namespace app {

/// One tree's work on paper, to carry into the garden; with the year of light if it is the only
/// one of the report.
[[nodiscard]] SheetBlocks treeBlocks(const TreeOnPaper& on);

/// The year of light on the plantings of the garden.
void addLight(SheetBlocks& blocks, const PaperReport& report, const model::Tables& tables,
              const Units& units);

} // namespace app
