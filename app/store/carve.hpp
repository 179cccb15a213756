#pragma once

#include <QByteArray>
#include <QString>

#include <cstdint>
#include <functional>
#include <variant>
#include <vector>

namespace app {

/// One value of a row: none, a whole number, a text as UTF-8, or bytes.
struct CarvedText {
    QByteArray utf8;
};
using CarvedValue = std::variant<std::monostate, std::int64_t, CarvedText, QByteArray>;
using CarvedRow = std::vector<CarvedValue>;

/// Reads the rows of an SQLite file's tables straight from its leaf pages, without its schema and
/// without the pages that lead to them, so that one broken page costs its own rows only. Rows whose
/// pages make no sense are passed over; the order is that of the pages.
///
/// Source: the SQLite project, "Database File Format", sqlite.org/fileformat2.html, 1.3 (header),
/// 1.6 (b-tree pages and cells, overflow) and 2.1 (record format).
void carveRows(const QString& path, const std::function<void(const CarvedRow&)>& take);

} // namespace app
