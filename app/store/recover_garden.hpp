#pragma once

#include "app/store/garden_store.hpp"

namespace app {

/// What was saved of a damaged garden file, and what was not.
struct Recovery {
    std::size_t trees{};
    std::size_t limbs{};
    std::size_t visits{};
    std::size_t things{}; ///< strips, plantings and all else
    std::size_t photos{};
    std::size_t doubtful{}; ///< parts whose checksum is wrong: one of their numbers may be
    std::vector<std::string>
        lost; ///< known to have been there, or read and unfit; as sentences say
};

/// Reads whatever can be read of a damaged garden file, row by row and page by page, leaves it as
/// it is, and writes a new garden without history to `to`.
/// \throws StoreError  when there is nothing to be read, or the new file can't be written
Recovery recoverGarden(const QString& damaged, const QString& to);

/// "garden, recovered.underbough" beside it, with a number when that is taken.
[[nodiscard]] QString recoveredName(const QString& path);

} // namespace app
