#pragma once

#include "model/species/csv.hpp"
#include "model/species/tables.hpp"

#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <vector>

/// The whole text of a file.
inline std::string fileText(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    if (!file)
        throw std::runtime_error("can't open " + path);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// The tables of trees/, as shipped.
inline const model::Tables& shippedTables()
{
    static const model::Tables tables = [] {
        const std::string folder = UNDERBOUGH_TREES "/";
        const auto sources = fileText(folder + "sources.csv");
        const auto wood = fileText(folder + "wood.csv");
        const auto practice = fileText(folder + "practice.csv");
        const auto leaf = fileText(folder + "leaf.csv");
        const auto plants = fileText(folder + "plants.csv");
        return model::readTables({sources, wood, practice, leaf, plants});
    }();
    return tables;
}

/// The rows of tests/published/`name`, header left out.
inline std::vector<model::CsvRow> publishedRows(const std::string& name)
{
    auto rows = model::readCsv(fileText(UNDERBOUGH_TESTS "/published/" + name));
    rows.erase(rows.begin());
    return rows;
}
