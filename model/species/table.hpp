#pragma once

#include "model/species/csv.hpp"
#include "model/species/tables.hpp"

#include <initializer_list>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace model {

/// The least and greatest value that a column may hold.
struct Range {
    double least{};
    double greatest{};
};

/// A word of a table and what it stands for.
template <typename Value>
using Word = std::pair<std::string_view, Value>;

/// One row of a table, read cell by cell under the name of its column. Every reading either
/// gives a value or throws a TableError that names the file, the line and the column.
class TableRow {
public:
    TableRow(std::string file, const std::vector<std::string>& header, CsvRow row,
             const Sources& sources);

    [[nodiscard]] std::size_t line() const { return row_.line; }
    [[nodiscard]] bool blank(std::string_view column) const;

    /// The cell as it stands; may be empty.
    [[nodiscard]] const std::string& text(std::string_view column) const;
    /// The cell, which must not be empty.
    [[nodiscard]] const std::string& filled(std::string_view column) const;
    [[nodiscard]] double number(std::string_view column, Range range) const;
    [[nodiscard]] std::optional<double> maybeNumber(std::string_view column, Range range) const;
    /// Months 1..12, a semicolon between; an empty cell gives none.
    [[nodiscard]] std::vector<int> months(std::string_view column) const;

    /// One key and one evidence from the columns `topic`_source and `topic`_evidence.
    [[nodiscard]] Sourced sourced(std::string_view column, Range range,
                                  std::string_view topic) const;
    [[nodiscard]] MaybeSourced maybeSourced(std::string_view column, Range range,
                                            std::string_view topic) const;
    /// \throws TableError  when `topic` has a source and none of `values` stands, or none has one
    void needSources(std::string_view topic, std::initializer_list<std::string_view> values) const
    {
        static_cast<void>(citations(topic, values));
    }
    /// As many keys as evidences; none exactly where all of `values` are blank.
    [[nodiscard]] std::vector<Citation>
    citations(std::string_view topic, std::initializer_list<std::string_view> values) const;
    /// The same into `sources`, where a topic without a value gets no entry.
    void cite(CitationsByTopic& sources, const std::string& topic,
              std::initializer_list<std::string_view> values) const;

    template <typename Value>
    [[nodiscard]] Value word(std::string_view column, std::span<const Word<Value>> words) const
    {
        const auto& cell = text(column);
        std::string known;
        for (const auto& [name, value] : words) {
            if (name == cell)
                return value;
            known += (known.empty() ? "" : ", ") + std::string(name);
        }
        fault(column, "one of " + known);
    }

    /// \throws TableError  saying what stands in the column and what should
    [[noreturn]] void fault(std::string_view column, const std::string& expected) const;

private:
    [[nodiscard]] Evidence evidence(std::string_view column, const std::string& name) const;
    [[nodiscard]] const std::string& knownSource(std::string_view column,
                                                 const std::string& key) const;

    std::string file_;
    const std::vector<std::string>* header_;
    CsvRow row_;
    const Sources* sources_;
};

/// A whole table: its header is exactly `columns`, and the first cell of each row is a name
/// that no other row has.
class Table {
public:
    /// \throws TableError  on broken CSV, another header, a wrong cell count, or a name that is
    ///         missing or doubled
    Table(std::string file, std::string_view text, std::vector<std::string> columns,
          const Sources& sources);

    [[nodiscard]] const std::vector<TableRow>& rows() const { return rows_; }
    /// The row of that name. \throws TableError  when there is none
    [[nodiscard]] const TableRow& row(const std::string& name) const;
    /// \throws TableError  when the table has a row whose name `other` hasn't
    void needEveryNameIn(const Table& other) const;

    Table(const Table&) = delete;
    Table& operator=(const Table&) = delete;

private:
    void checkHeader(const CsvRow& header) const;

    std::string file_;
    std::vector<std::string> columns_;
    std::vector<TableRow> rows_;
    std::map<std::string, std::size_t> byName_;
};

} // namespace model
