#pragma once

#include "app/paper/paper_report.hpp"

#include <QStringList>

namespace app {

/// Tables for other programs, the first record their head. SI units, a point as decimal mark, days
/// as 2026-07-14; blank: not known.

/// One record a tree: what it is, where it stands, how large it is, what was seen of it.
[[nodiscard]] std::vector<QStringList> inventoryRecords(const model::Garden& garden,
                                                        const model::Tables& tables);

/// One record a visit, the oldest first.
[[nodiscard]] std::vector<QStringList> visitRecords(const model::Garden& garden);

/// One record a limb of each assessed tree: load now and after the cuts, breaking gusts.
[[nodiscard]] std::vector<QStringList> loadRecords(const PaperReport& report);

} // namespace app
