#include "model/species/tables.hpp"

#include "model/species/read_tables.hpp"

namespace model {
namespace {

Sources readSources(std::string_view text)
{
    const Sources none;
    Sources sources;
    const Table table("sources.csv", text, {"key", "reference"}, none);
    for (const auto& row : table.rows())
        sources[row.filled("key")] = row.filled("reference");
    return sources;
}

} // namespace

Tables readTables(const TableTexts& texts)
{
    Tables tables;
    tables.sources = readSources(texts.sources);
    const Table wood("wood.csv", texts.wood, woodColumns(), tables.sources);
    const Table practice("practice.csv", texts.practice, practiceColumns(), tables.sources);
    const Table leaf("leaf.csv", texts.leaf, leafColumns(), tables.sources);
    practice.needEveryNameIn(wood);
    leaf.needEveryNameIn(wood);
    for (const auto& row : wood.rows()) {
        const auto& latin = row.text("latin");
        tables.species.push_back({latin, row.filled("common"), readWood(row),
                                  readPractice(practice.row(latin)), readLeaf(leaf.row(latin))});
    }
    const Table plants("plants.csv", texts.plants, plantColumns(), tables.sources);
    for (const auto& row : plants.rows())
        tables.plants.push_back(readPlant(row));
    return tables;
}

} // namespace model
