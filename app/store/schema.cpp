#include "app/store/schema.hpp"

#include <array>
#include <span>
#include <string>

namespace app {
namespace {

constexpr std::array kFirst{
    "CREATE TABLE head("
    "  id INTEGER PRIMARY KEY CHECK(id = 1),"
    "  key TEXT NOT NULL,"
    "  edition INTEGER NOT NULL,"
    "  parts_sum INTEGER NOT NULL,"
    "  crc INTEGER NOT NULL)",
    "CREATE TABLE part("
    "  kind TEXT NOT NULL,"
    "  tree TEXT NOT NULL,"
    "  id TEXT NOT NULL,"
    "  place INTEGER NOT NULL,"
    "  document TEXT NOT NULL,"
    "  crc INTEGER NOT NULL,"
    "  PRIMARY KEY(kind, tree, id))",
    "CREATE TABLE photo("
    "  name TEXT PRIMARY KEY NOT NULL,"
    "  bytes BLOB NOT NULL,"
    "  crc INTEGER NOT NULL)",
    "CREATE VIEW tree AS SELECT id, json_extract(document, '$.name') AS name,"
    "  json_extract(document, '$.species') AS species,"
    "  json_extract(document, '$.position_m[0]') AS east_m,"
    "  json_extract(document, '$.position_m[1]') AS north_m,"
    "  json_extract(document, '$.planted_year') AS planted_year"
    "  FROM part WHERE kind = 'trees' ORDER BY place",
    "CREATE VIEW visit AS SELECT tree, id, json_extract(document, '$.date') AS date,"
    "  json_extract(document, '$.by') AS by,"
    "  json_extract(document, '$.leaf_share') AS leaf_share,"
    "  json_extract(document, '$.note') AS note,"
    "  json_extract(document, '$.next_due') AS next_due"
    "  FROM part WHERE kind = 'visits' ORDER BY tree, place",
};

constexpr std::array kSecond{
    "ALTER TABLE head ADD COLUMN done INTEGER NOT NULL DEFAULT 0",
    "ALTER TABLE photo ADD COLUMN thumbnail BLOB",
    "ALTER TABLE photo ADD COLUMN width_px INTEGER",
    "ALTER TABLE photo ADD COLUMN height_px INTEGER",
    "CREATE TABLE step("
    "  number INTEGER PRIMARY KEY,"
    "  name TEXT NOT NULL,"
    "  gesture INTEGER NOT NULL,"
    "  crc INTEGER NOT NULL)",
    "CREATE TABLE step_part("
    "  step INTEGER NOT NULL REFERENCES step(number) ON DELETE CASCADE,"
    "  kind TEXT NOT NULL,"
    "  tree TEXT NOT NULL,"
    "  id TEXT NOT NULL,"
    "  place_before INTEGER,"
    "  before TEXT,"
    "  place_after INTEGER,"
    "  after TEXT,"
    "  PRIMARY KEY(step, kind, tree, id))",
};

void runAll(Connection& connection, std::span<const char* const> statements)
{
    for (const char* statement : statements)
        connection.run(QLatin1String(statement));
}

} // namespace

int storeVersion(Connection& connection)
{
    using Kind = StoreError::Kind;
    if (connection.number(QStringLiteral("PRAGMA application_id")) != kApplicationId)
        throw StoreError(Kind::foreign, "another program's SQLite file", "a garden file");
    const auto version = connection.number(QStringLiteral("PRAGMA user_version"));
    if (version > kStoreVersion)
        throw StoreError(Kind::newer, "a garden file of version " + std::to_string(version),
                         "version " + std::to_string(kStoreVersion) +
                             " or older; a newer program wrote this one and can open it");
    if (version < 1)
        throw StoreError(Kind::damaged, "a garden file of no version", "version 1 or newer");
    return static_cast<int>(version);
}

void raiseSchema(Connection& connection, int from, int to)
{
    const std::array<std::span<const char* const>, kStoreVersion> steps{kFirst, kSecond};
    for (int version = from; version < to; ++version)
        runAll(connection, steps.at(static_cast<std::size_t>(version)));
    connection.run(QStringLiteral("PRAGMA application_id = %1").arg(kApplicationId));
    connection.run(QStringLiteral("PRAGMA user_version = %1").arg(to));
}

} // namespace app
