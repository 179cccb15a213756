#pragma once

#include "app/paper/block.hpp"
#include "app/paper/paper_report.hpp"

namespace app {

/// Each gives back why it could not be done, as "PATH: why", or nothing.

/// Every figure of a sheet as a PNG, in a folder that is made if need be.
[[nodiscard]] QString writeFigures(const Sheet& sheet, const QString& folder);

/// inventory.csv, visits.csv, loads.csv and plan.geojson there.
[[nodiscard]] QString writeTables(const PaperReport& report, const model::Tables& tables,
                                  const QString& folder);

} // namespace app
