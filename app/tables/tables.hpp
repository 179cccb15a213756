#pragma once

#include "model/species/tables.hpp"

namespace app {

/// The species, plants and practice tables that were built into the program.
///
/// Reads and checks them anew on each call (a few milliseconds): main() calls it once and hands
/// the value on.
/// \throws model::TableError  if a table in trees/ is unfit; the tests keep that from shipping
[[nodiscard]] model::Tables loadTables();

} // namespace app
