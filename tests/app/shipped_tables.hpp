#pragma once

#include "app/tables/tables.hpp"

namespace app {

/// The tables that the program ships, read once.
inline const model::Tables& tables()
{
    static const model::Tables kTables = loadTables();
    return kTables;
}

} // namespace app
