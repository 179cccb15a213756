#pragma once

#include "app/store/connection.hpp"

namespace app {

/// What marks a garden file, in the header of its SQLite file: "Ubgh".
inline constexpr int kApplicationId = 0x55626768;
/// The form that this program writes. Version 1 had no history and no thumbnails.
inline constexpr int kStoreVersion = 2;

/// The version of an open garden file.
/// \throws StoreError  foreign: it is none; newer: a newer program wrote it
[[nodiscard]] int storeVersion(Connection& connection);

/// Lays out an empty file, or raises an older one step by step. Part of the caller's transaction.
/// \throws StoreError
void raiseSchema(Connection& connection, int from, int to = kStoreVersion);

} // namespace app
