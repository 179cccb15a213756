#pragma once

#include "app/paper/sheet_parts.hpp"

namespace app {

/// The report as it stands on paper: one tree's work, or with more trees a page of the whole
/// garden and then each tree's.
[[nodiscard]] Sheet reportSheet(const PaperReport& report, const model::Tables& tables,
                                const Units& units);

/// Every figure of the report, once.
[[nodiscard]] std::vector<Figure> figuresOf(const Sheet& sheet);

} // namespace app
