#pragma once

#include "app/store/connection.hpp"
#include "app/store/garden_store.hpp"

/// The tables of a garden file, each read and written here alone. All may throw StoreError; a row
/// that is not what was written is `damaged`.
namespace app {

/// The one row of the table `head`.
struct Head {
    Edition edition;
    std::int64_t partsSum{}; ///< of the checksums of all parts: a row too few or too many shows
    std::int64_t done{};
};

[[nodiscard]] Head readHead(Connection& connection, int version);
void writeHead(Connection& connection, const Head& head);

[[nodiscard]] std::int64_t checksumOf(const PartKey& key, const Part& part);
[[nodiscard]] Parts readParts(Connection& connection, const Head& head);
/// \returns the new sum of the parts' checksums
/// \throws StoreError  changed: the file's parts are not those of the change's `before`
[[nodiscard]] std::int64_t writeParts(Connection& connection, std::int64_t sum,
                                      const GardenChange& change);

[[nodiscard]] std::vector<Step> readSteps(Connection& connection);
void writeStep(Connection& connection, const Step& step);
void dropStep(Connection& connection, std::int64_t number);

} // namespace app
