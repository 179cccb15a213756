#pragma once

#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace published {

using Row = std::map<std::string, std::string>;

inline std::vector<std::string> cells(const std::string& line)
{
    std::vector<std::string> found;
    std::stringstream rest(line + ",");
    for (std::string cell; std::getline(rest, cell, ',');)
        found.push_back(cell);
    return found;
}

/// The rows of tests/published/`file`, by column name; lines that begin with # are its source.
inline std::vector<Row> table(const std::string& file)
{
    std::ifstream in(std::string(UNDERBOUGH_TESTS) + "/published/" + file);
    if (!in)
        throw std::runtime_error("no table " + file);
    std::vector<std::string> names;
    std::vector<Row> rows;
    for (std::string line; std::getline(in, line);) {
        if (line.empty() || line.front() == '#')
            continue;
        const auto found = cells(line);
        if (names.empty()) {
            names = found;
            continue;
        }
        Row row;
        for (std::size_t i = 0; i < names.size(); ++i)
            row[names[i]] = found.at(i);
        rows.push_back(row);
    }
    return rows;
}

inline double number(const Row& row, const std::string& name)
{
    return std::stod(row.at(name));
}

} // namespace published
