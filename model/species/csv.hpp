#pragma once

#include <cstddef>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace model {

/// One record of a CSV text.
struct CsvRow {
    std::size_t line{}; ///< where it begins, 1 for the first line of the text
    std::vector<std::string> cells;
};

/// A text that breaks the rules of CSV.
class CsvError : public std::runtime_error {
public:
    CsvError(std::size_t line, const std::string& message)
        : std::runtime_error(message), line_(line)
    {
    }
    [[nodiscard]] std::size_t line() const { return line_; }

private:
    std::size_t line_;
};

/// All records of a CSV text as in RFC 4180 (LF as well as CRLF, and a byte order mark at the
/// start). One addition: lines that begin with '#' before the first record are comments, and
/// blank lines are skipped.
/// \throws CsvError  on a quote inside a bare cell, text after a closing quote, a quote that is
///         never closed, or a lone CR
[[nodiscard]] std::vector<CsvRow> readCsv(std::string_view text);

} // namespace model
