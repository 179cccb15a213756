#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

namespace {

using model::TableError;

/// A small table whose cells are set by the name of their column.
struct SmallTable {
    std::vector<std::string> header;
    std::vector<std::vector<std::string>> rows;

    std::string& cell(const std::string& column, std::size_t row = 0)
    {
        const auto at = std::ranges::find(header, column) - header.begin();
        return rows.at(row).at(static_cast<std::size_t>(at));
    }

    [[nodiscard]] std::string text() const
    {
        std::string text = "# a comment\n";
        const auto add = [&](const std::vector<std::string>& cells) {
            for (std::size_t i = 0; i < cells.size(); ++i)
                text += (i == 0 ? "" : ",") + cells[i];
            text += '\n';
        };
        add(header);
        std::ranges::for_each(rows, add);
        return text;
    }
};

/// The first `count` rows of a shipped table.
SmallTable shortened(const std::string& file, std::size_t count)
{
    const auto rows = model::readCsv(fileText(UNDERBOUGH_TREES "/" + file));
    SmallTable table{rows.front().cells, {}};
    for (std::size_t i = 1; i <= count; ++i) {
        table.rows.push_back(rows.at(i).cells);
        for (auto& cell : table.rows.back())
            std::ranges::replace(cell, ',', '.'); // so that no cell needs quotes
    }
    return table;
}

/// Two species and two plants with all their sources: header on line 2, rows from line 3.
struct SmallTables {
    SmallTable wood = shortened("wood.csv", 2);
    SmallTable practice = shortened("practice.csv", 2);
    SmallTable leaf = shortened("leaf.csv", 2);
    SmallTable plants = shortened("plants.csv", 2);
    std::string sources = fileText(UNDERBOUGH_TREES "/sources.csv");

    [[nodiscard]] model::Tables read() const
    {
        const auto woodText = wood.text();
        const auto practiceText = practice.text();
        const auto leafText = leaf.text();
        const auto plantsText = plants.text();
        return model::readTables({sources, woodText, practiceText, leafText, plantsText});
    }
};

TEST(Tables, ReadsTwoSpeciesAndTwoPlants)
{
    const auto tables = SmallTables{}.read();
    EXPECT_EQ(tables.species.size(), 2U);
    EXPECT_EQ(tables.plants.size(), 2U);
}

struct Refusal {
    const char* name;
    std::function<void(SmallTables&)> spoil;
    const char* message; ///< all of it
};

class TablesRefuse : public testing::TestWithParam<Refusal> {};

TEST_P(TablesRefuse, AndSayWhereAndWhy)
{
    SmallTables tables;
    GetParam().spoil(tables);
    try {
        static_cast<void>(tables.read());
        FAIL() << "was read";
    } catch (const TableError& error) {
        EXPECT_STREQ(error.what(), GetParam().message);
    }
}

Refusal setting(const char* name, SmallTable SmallTables::*table, const char* column,
                const char* value, const char* message)
{
    return {name, [=](SmallTables& tables) { (tables.*table).cell(column) = value; }, message};
}

constexpr auto kWood = &SmallTables::wood;
constexpr auto kPractice = &SmallTables::practice;
constexpr auto kLeaf = &SmallTables::leaf;
constexpr auto kPlants = &SmallTables::plants;

INSTANTIATE_TEST_SUITE_P(
    Cells, TablesRefuse,
    testing::Values(
        setting("BrokenNumber", kWood, "green_mor_Pa", "4o000000",
                "wood.csv line 3, column green_mor_Pa: found \"4o000000\", expected a number from "
                "1e+07 to 2e+08"),
        setting("CommaNumber", kWood, "basic_specific_gravity", "0;44",
                "wood.csv line 3, column basic_specific_gravity: found \"0;44\", expected a number "
                "from 0.1 to 1.3"),
        setting("NumberWithTail", kLeaf, "crown_lai", "3.88m2",
                "leaf.csv line 3, column crown_lai: found \"3.88m2\", expected a number from 0.05 "
                "to 15"),
        setting("MissingNumber", kWood, "green_moe_Pa", "",
                "wood.csv line 3, column green_moe_Pa: found nothing, expected a number from 1e+09 "
                "to 3e+10"),
        setting("NotANumber", kWood, "green_moe_Pa", "nan",
                "wood.csv line 3, column green_moe_Pa: found \"nan\", expected a number from 1e+09 "
                "to 3e+10"),
        setting("Infinite", kWood, "green_moe_Pa", "inf",
                "wood.csv line 3, column green_moe_Pa: found \"inf\", expected a number from 1e+09 "
                "to 3e+10"),
        setting("TooLarge", kWood, "green_mor_Pa", "4e8",
                "wood.csv line 3, column green_mor_Pa: found \"4e8\", expected a number from 1e+07 "
                "to 2e+08"),
        setting("MegapascalsForPascals", kWood, "green_mor_Pa", "40",
                "wood.csv line 3, column green_mor_Pa: found \"40\", expected a number from 1e+07 "
                "to 2e+08"),
        setting("UnknownSource", kWood, "mor_source", "WH-9-9",
                "wood.csv line 3, column mor_source: found \"WH-9-9\", expected a key of "
                "sources.csv"),
        setting("MissingSource", kWood, "mor_source", "",
                "wood.csv line 3, column mor_source: found nothing, expected a key of sources.csv"),
        setting("TwoSourcesForOneValue", kWood, "mor_source", "WH-5-3a;TB479",
                "wood.csv line 3, column mor_evidence: found \"memory\", expected as many words as "
                "there are sources"),
        setting("UnknownEvidence", kWood, "mor_evidence", "rumour",
                "wood.csv line 3, column mor_evidence: found \"rumour\", expected found, derived, "
                "proxy, memory or assumed"),
        setting("SourceOfABlank", kWood, "green_work_J_m3", "",
                "wood.csv line 3, column work_source: found \"WH-5-3a\", expected nothing, because "
                "the value is blank"),
        setting("UnknownWord", kWood, "drag_group", "floppy",
                "wood.csv line 3, column drag_group: found \"floppy\", expected one of flexible, "
                "fine_leaved, medium, stiff, scale_conifer, needle_conifer"),
        setting("UnknownWoodClass", kWood, "wood_class", "palm",
                "wood.csv line 3, column wood_class: found \"palm\", expected one of conifer, "
                "hardwood"),
        setting("LimbLighterThanStem", kWood, "limb_density_kg_m3", "400",
                "wood.csv line 3, column limb_density_kg_m3: found \"400\", expected no less than "
                "the density of the stem"),
        setting("MissingName", kWood, "latin", "",
                "wood.csv line 3, column latin: found nothing, expected a text"),
        setting("DoubledName", kWood, "latin", "Acer rubrum",
                "wood.csv line 4, column latin: found \"Acer rubrum\", expected a name that line 3 "
                "doesn't have already"),
        setting("NameMissingInPractice", kPractice, "latin", "Acer campestre",
                "practice.csv line 3, column latin: found \"Acer campestre\", expected a name that "
                "wood.csv has too"),
        setting("NameMissingInLeaf", kLeaf, "latin", "Acer campestre",
                "leaf.csv line 3, column latin: found \"Acer campestre\", expected a name that "
                "wood.csv has too")),
    [](const auto& each) { return each.param.name; });

INSTANTIATE_TEST_SUITE_P(
    MoreCells, TablesRefuse,
    testing::Values(
        setting("MonthThirteen", kPractice, "best_months_north", "11;13",
                "practice.csv line 3, column best_months_north: found \"11;13\", expected months 1 "
                "to 12 with a semicolon between"),
        setting("MonthTwice", kPractice, "best_months_north", "11;11",
                "practice.csv line 3, column best_months_north: found \"11;11\", expected each "
                "month once"),
        setting("MonthGoodAndBad", kPractice, "best_months_north", "2",
                "practice.csv line 3, column avoid_months_north: found \"2;3;4;5\", expected no "
                "month that is among the best"),
        setting("NoReason", kPractice, "avoid_reason", "",
                "practice.csv line 3, column avoid_reason: found nothing, expected a reason "
                "exactly where there are months to avoid"),
        setting("LowOverHigh", kPractice, "height_low_m", "28",
                "practice.csv line 3, column height_high_m: found \"27\", expected no less than "
                "height_low_m"),
        setting("UnknownHabit", kPractice, "crown_habit", "bushy",
                "practice.csv line 3, column crown_habit: found \"bushy\", expected one of vase, "
                "spreading, rounded, upright, weeping, conical, columnar"),
        setting("UnknownRating", kPractice, "sprouting", "some",
                "practice.csv line 3, column sprouting: found \"some\", expected one of low, "
                "medium, high"),
        setting("ShareOverOne", kPractice, "max_annual_removal", "25",
                "practice.csv line 3, column max_annual_removal: found \"25\", expected a number "
                "from 0 to 1"),
        setting("QuartileOverMedian", kLeaf, "crown_lai_quartile1", "4",
                "leaf.csv line 3, column crown_lai_quartile1: found \"4\", expected a number from "
                "0.05 to 3.88"),
        setting("UnnamedProxy", kLeaf, "lai_evidence", "proxy",
                "leaf.csv line 3, column lai_evidence: found \"proxy\", expected proxy exactly "
                "where lai_species is another species"),
        setting("SourceOfABlankIndex", kLeaf, "crown_lai", "",
                "leaf.csv line 3, column lai_source: found \"UTD2016\", expected nothing, because "
                "the value is blank"),
        setting("AngleOfABlank", kLeaf, "leaf_angle_mean_deg", "30",
                "leaf.csv line 3, column leaf_angle_mean_deg: found \"30\", expected a mean angle "
                "exactly where leaf_angle_x stands"),
        setting("LeastOverGood", kPlants, "min_sun_h", "9",
                "plants.csv line 3, column good_sun_h: found \"4\", expected no less than the "
                "least"),
        setting("DayTooLong", kPlants, "good_sun_h", "25",
                "plants.csv line 3, column good_sun_h: found \"25\", expected a number from 0 to "
                "24"),
        setting("UnknownTolerance", kPlants, "shade_tolerance", "full",
                "plants.csv line 3, column shade_tolerance: found \"full\", expected one of low, "
                "medium, high"),
        setting("UnknownKind", kPlants, "kind", "cactus",
                "plants.csv line 3, column kind: found \"cactus\", expected one of hedge, shrub, "
                "vegetable, fruit, perennial, flower, lawn"),
        setting("NoCommonName", kPlants, "common", "",
                "plants.csv line 3, column common: found nothing, expected a text")),
    [](const auto& each) { return each.param.name; });

INSTANTIATE_TEST_SUITE_P(
    Shapes, TablesRefuse,
    testing::Values(
        Refusal{"TooFewCells", [](SmallTables& small) { small.wood.rows[1].pop_back(); },
                "wood.csv line 4: found 29 cells, expected 30"},
        Refusal{"TooManyCells", [](SmallTables& small) { small.plants.rows[0].emplace_back("x"); },
                "plants.csv line 3: found 20 cells, expected 19"},
        Refusal{"RowMissingInLeaf", [](SmallTables& small) { small.leaf.rows.pop_back(); },
                "leaf.csv: found no row for \"Acer rubrum\", expected one"},
        Refusal{"RowMissingInPractice", [](SmallTables& small) { small.practice.rows.pop_back(); },
                "practice.csv: found no row for \"Acer rubrum\", expected one"},
        Refusal{"MissingColumn",
                [](SmallTables& small) {
                    small.leaf.header.pop_back();
                    for (auto& row : small.leaf.rows)
                        row.pop_back();
                },
                "leaf.csv line 2, column 21: found nothing, expected \"note\""},
        Refusal{"OtherColumn", [](SmallTables& small) { small.leaf.header[1] = "angle"; },
                "leaf.csv line 2, column 2: found \"angle\", expected \"leaf_angle_mean_deg\""},
        Refusal{"SurplusColumn", [](SmallTables& small) { small.leaf.header.emplace_back("more"); },
                "leaf.csv line 2, column 22: found \"more\", expected nothing"},
        Refusal{"QuartileWithoutMedian",
                [](SmallTables& small) {
                    for (const auto* column : {"crown_lai", "lai_source", "lai_evidence"})
                        small.leaf.cell(column).clear();
                },
                "leaf.csv line 3, column crown_lai_quartile1: found \"2.89\", expected nothing, "
                "because crown_lai is blank"},
        Refusal{"NoTable", [](SmallTables& small) { small.sources = "# nothing here\n"; },
                "sources.csv: found nothing, expected a table"},
        Refusal{"OpenQuote",
                [](SmallTables& small) { small.sources = "key,reference\nA,\"open\n"; },
                "sources.csv line 2: found a quote that is never closed, expected CSV as in RFC "
                "4180"},
        Refusal{"SourceTwice",
                [](SmallTables& small) { small.sources = "key,reference\nA,one\nA,two\n"; },
                "sources.csv line 3, column key: found \"A\", expected a name that line 2 doesn't "
                "have already"},
        Refusal{"SourceWithoutReference",
                [](SmallTables& small) { small.sources = "key,reference\nA,\n"; },
                "sources.csv line 2, column reference: found nothing, expected a text"}),
    [](const auto& each) { return each.param.name; });

} // namespace
