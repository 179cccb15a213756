#pragma once

#include "model/species/species.hpp"

#include <stdexcept>
#include <string>
#include <string_view>

namespace model {

/// The texts of the files in trees/, as read by the caller (the model reads no files).
struct TableTexts {
    std::string_view sources;
    std::string_view wood;
    std::string_view practice;
    std::string_view leaf;
    std::string_view plants;
};

/// A table that can't be used. what() says file, line, column, what stands there and what should.
class TableError : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// Reads and joins the tables by Latin name.
/// \throws TableError  on a broken number, a value out of range, an unknown source key, a doubled
///         or missing name, an unknown word, or a row with too few or too many cells
[[nodiscard]] Tables readTables(const TableTexts& texts);

} // namespace model
