#include "model/species/tables.hpp"
#include "tests/fuzz/targets.hpp"

#include <algorithm>

namespace fuzz {
namespace {

std::string_view next(std::string_view& bytes)
{
    const auto end = std::min(bytes.find(kNextTable), bytes.size());
    const auto table = bytes.substr(0, end);
    bytes.remove_prefix(std::min(end + 1, bytes.size()));
    return table;
}

} // namespace

void tables(std::string_view bytes)
{
    model::TableTexts texts;
    for (auto* table : {&texts.sources, &texts.wood, &texts.practice, &texts.leaf, &texts.plants})
        *table = next(bytes);
    try {
        const auto read = model::readTables(texts);
        hold(std::ranges::none_of(read.species, [](const auto& row) { return row.latin.empty(); }),
             "a species has a name");
    } catch (const model::TableError& refusal) {
        hold(isOneLine(refusal.what()), "a table is refused in one line");
    }
}

} // namespace fuzz
