#include "model/species/table.hpp"

#include "model/escaped.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace model {
namespace {

constexpr std::array<Word<Evidence>, 5> kEvidence{{{"found", Evidence::found},
                                                   {"derived", Evidence::derived},
                                                   {"proxy", Evidence::proxy},
                                                   {"memory", Evidence::memory},
                                                   {"assumed", Evidence::assumed}}};

std::string place(const std::string& file, std::size_t line, std::string_view column)
{
    return file + " line " + std::to_string(line) + ", column " + std::string(column);
}

std::string quote(const std::string& cell)
{
    constexpr std::size_t kLongest = 60;
    if (cell.empty())
        return "nothing";
    return '"' + escaped(cell.size() > kLongest ? cell.substr(0, kLongest) + "..." : cell) + '"';
}

std::string shortest(double value)
{
    std::array<char, 32> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr;
    return {buffer.data(), end};
}

std::optional<double> parseNumber(const std::string& cell)
{
    double value{};
    const auto* end = cell.data() + cell.size();
    const auto result = std::from_chars(cell.data(), end, value);
    if (result.ec != std::errc{} || result.ptr != end || !std::isfinite(value))
        return std::nullopt;
    return value;
}

std::vector<std::string> split(const std::string& cell)
{
    std::vector<std::string> parts;
    if (cell.empty())
        return parts;
    std::size_t from = 0;
    for (auto at = cell.find(';'); at != std::string::npos; at = cell.find(';', from)) {
        parts.push_back(cell.substr(from, at - from));
        from = at + 1;
    }
    parts.push_back(cell.substr(from));
    return parts;
}

} // namespace

TableRow::TableRow(std::string file, const std::vector<std::string>& header, CsvRow row,
                   const Sources& sources)
    : file_(std::move(file)), header_(&header), row_(std::move(row)), sources_(&sources)
{
}

void TableRow::fault(std::string_view column, const std::string& expected) const
{
    throw TableError(place(file_, row_.line, column) + ": found " + quote(text(column)) +
                     ", expected " + expected);
}

const std::string& TableRow::text(std::string_view column) const
{
    const auto found = std::ranges::find(*header_, column);
    if (found == header_->end())
        throw std::logic_error("no column is called " + std::string(column));
    return row_.cells[static_cast<std::size_t>(found - header_->begin())];
}

bool TableRow::blank(std::string_view column) const
{
    return text(column).empty();
}

const std::string& TableRow::filled(std::string_view column) const
{
    const auto& cell = text(column);
    if (cell.empty())
        fault(column, "a text");
    return cell;
}

double TableRow::number(std::string_view column, Range range) const
{
    const auto value = parseNumber(text(column));
    if (!value || *value < range.least || *value > range.greatest)
        fault(column, "a number from " + shortest(range.least) + " to " + shortest(range.greatest));
    return *value;
}

std::optional<double> TableRow::maybeNumber(std::string_view column, Range range) const
{
    if (blank(column))
        return std::nullopt;
    return number(column, range);
}

std::vector<int> TableRow::months(std::string_view column) const
{
    std::vector<int> months;
    for (const auto& part : split(text(column))) {
        const auto month = parseNumber(part);
        if (!month || *month != std::floor(*month) || *month < 1.0 || *month > 12.0)
            fault(column, "months 1 to 12 with a semicolon between");
        months.push_back(static_cast<int>(*month));
        if (std::ranges::count(months, months.back()) > 1)
            fault(column, "each month once");
    }
    return months;
}

Evidence TableRow::evidence(std::string_view column, const std::string& name) const
{
    const auto* const found = std::ranges::find(kEvidence, name, &Word<Evidence>::first);
    if (found == kEvidence.end())
        fault(column, "found, derived, proxy, memory or assumed");
    return found->second;
}

const std::string& TableRow::knownSource(std::string_view column, const std::string& key) const
{
    if (!sources_->contains(key))
        fault(column, "a key of sources.csv");
    return key;
}

std::vector<Citation> TableRow::citations(std::string_view topic,
                                          std::initializer_list<std::string_view> values) const
{
    const auto sourceColumn = std::string(topic) + "_source";
    const auto evidenceColumn = std::string(topic) + "_evidence";
    const auto keys = split(text(sourceColumn));
    const auto names = split(text(evidenceColumn));
    const bool allBlank = std::ranges::all_of(values, [&](auto value) { return blank(value); });
    if (allBlank && !keys.empty())
        fault(sourceColumn, "nothing, because the value is blank");
    if (!allBlank && keys.empty())
        fault(sourceColumn, "a key of sources.csv");
    if (names.size() != keys.size())
        fault(evidenceColumn, "as many words as there are sources");
    std::vector<Citation> citations;
    for (std::size_t i = 0; i < keys.size(); ++i)
        citations.push_back(
            {knownSource(sourceColumn, keys[i]), evidence(evidenceColumn, names[i])});
    return citations;
}

void TableRow::cite(CitationsByTopic& sources, const std::string& topic,
                    std::initializer_list<std::string_view> values) const
{
    if (auto cited = citations(topic, values); !cited.empty())
        sources[topic] = std::move(cited);
}

Sourced TableRow::sourced(std::string_view column, Range range, std::string_view topic) const
{
    const auto value = number(column, range);
    const auto cited = citations(topic, {column});
    if (cited.size() != 1)
        fault(std::string(topic) + "_source", "one key of sources.csv");
    return {value, cited.front().source, cited.front().evidence};
}

MaybeSourced TableRow::maybeSourced(std::string_view column, Range range,
                                    std::string_view topic) const
{
    if (blank(column))
        return std::nullopt;
    return sourced(column, range, topic);
}

Table::Table(std::string file, std::string_view text, std::vector<std::string> columns,
             const Sources& sources)
    : file_(std::move(file)), columns_(std::move(columns))
{
    std::vector<CsvRow> read;
    try {
        read = readCsv(text);
    } catch (const CsvError& error) {
        throw TableError(file_ + " line " + std::to_string(error.line()) + ": found " +
                         error.what() + ", expected CSV as in RFC 4180");
    }
    if (read.empty())
        throw TableError(file_ + ": found nothing, expected a table");
    checkHeader(read.front());
    for (std::size_t i = 1; i < read.size(); ++i) {
        if (read[i].cells.size() != columns_.size())
            throw TableError(file_ + " line " + std::to_string(read[i].line) + ": found " +
                             std::to_string(read[i].cells.size()) + " cells, expected " +
                             std::to_string(columns_.size()));
        rows_.emplace_back(file_, columns_, read[i], sources);
        const auto& row = rows_.back();
        const auto& name = row.filled(columns_.front());
        const auto [known, isNew] = byName_.try_emplace(name, rows_.size() - 1);
        if (!isNew)
            row.fault(columns_.front(), "a name that line " +
                                            std::to_string(rows_[known->second].line()) +
                                            " doesn't have already");
    }
}

void Table::checkHeader(const CsvRow& header) const
{
    for (std::size_t i = 0; i < std::max(header.cells.size(), columns_.size()); ++i) {
        const std::string found = i < header.cells.size() ? quote(header.cells[i]) : "nothing";
        const std::string expected = i < columns_.size() ? quote(columns_[i]) : "nothing";
        if (found != expected)
            throw TableError(file_ + " line " + std::to_string(header.line) + ", column " +
                             std::to_string(i + 1) + ": found " + found + ", expected " + expected);
    }
}

const TableRow& Table::row(const std::string& name) const
{
    const auto found = byName_.find(name);
    if (found == byName_.end())
        throw TableError(file_ + ": found no row for " + quote(name) + ", expected one");
    return rows_[found->second];
}

void Table::needEveryNameIn(const Table& other) const
{
    for (const auto& each : rows_) {
        const auto& name = each.text(columns_.front());
        if (!other.byName_.contains(name))
            each.fault(columns_.front(), "a name that " + other.file_ + " has too");
    }
}

} // namespace model
