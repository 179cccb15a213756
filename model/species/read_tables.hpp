#pragma once

#include "model/species/table.hpp"

#include <string>
#include <vector>

/// One row of each table of trees/ into its record; used by readTables alone.
namespace model {

[[nodiscard]] std::vector<std::string> woodColumns();
[[nodiscard]] Wood readWood(const TableRow& row);

[[nodiscard]] std::vector<std::string> practiceColumns();
[[nodiscard]] Practice readPractice(const TableRow& row);

[[nodiscard]] std::vector<std::string> leafColumns();
[[nodiscard]] Leaf readLeaf(const TableRow& row);

[[nodiscard]] std::vector<std::string> plantColumns();
[[nodiscard]] Plant readPlant(const TableRow& row);

} // namespace model
