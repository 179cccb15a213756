#pragma once

#include "app/paper/sheet_parts.hpp"

namespace app {

/// Where the figures on a tree's paper come from, a line each: the species' figures, the rules
/// that speak, the methods.
[[nodiscard]] QStringList sourcesUsed(const TreeOnPaper& on);

} // namespace app
