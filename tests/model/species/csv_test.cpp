#include "model/species/csv.hpp"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace {

using Cells = std::vector<std::string>;

std::vector<Cells> cellsOf(std::string_view text)
{
    std::vector<Cells> all;
    for (const auto& row : model::readCsv(text))
        all.push_back(row.cells);
    return all;
}

// Published: RFC 4180, section 2, rules 1 to 7, with its own examples.
TEST(Csv, ReadsTheExamplesOfTheStandard)
{
    const std::vector<Cells> expected{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};
    EXPECT_EQ(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), expected);
    EXPECT_EQ(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx"), expected);
    EXPECT_EQ(cellsOf("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), expected);
    EXPECT_EQ(cellsOf("\"aaa\",\"b\r\nbb\",\"ccc\""),
              (std::vector<Cells>{{"aaa", "b\r\nbb", "ccc"}}));
    EXPECT_EQ(cellsOf("\"aaa\",\"b\"\"bb\",\"ccc\""),
              (std::vector<Cells>{{"aaa", "b\"bb", "ccc"}}));
}

TEST(Csv, KeepsSpacesAndEmptyCells)
{
    EXPECT_EQ(cellsOf(" a ,,\"\",\n"), (std::vector<Cells>{{" a ", "", "", ""}}));
}

TEST(Csv, SkipsTheByteOrderMarkCommentsBeforeTheHeaderAndBlankLines)
{
    const auto rows = model::readCsv("\xEF\xBB\xBF# one\n\n# two, \"three\na,b\n\n#c,d\n");
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].line, 4U);
    EXPECT_EQ(rows[0].cells, (Cells{"a", "b"}));
    EXPECT_EQ(rows[1].line, 6U);
    EXPECT_EQ(rows[1].cells, (Cells{"#c", "d"}));
}

TEST(Csv, CountsLinesInsideQuotes)
{
    const auto rows = model::readCsv("a,\"b\nc\nd\"\ne,f\n");
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[1].line, 4U);
}

TEST(Csv, AnEmptyTextHasNoRows)
{
    EXPECT_TRUE(model::readCsv("").empty());
    EXPECT_TRUE(model::readCsv("\xEF\xBB\xBF").empty());
    EXPECT_TRUE(model::readCsv("# only this").empty());
}

struct Broken {
    const char* name;
    const char* text;
    std::size_t line;
};

class CsvRefuses : public testing::TestWithParam<Broken> {};

TEST_P(CsvRefuses, AndSaysTheLine)
{
    try {
        static_cast<void>(model::readCsv(GetParam().text));
        FAIL() << "was read";
    } catch (const model::CsvError& error) {
        EXPECT_EQ(error.line(), GetParam().line) << error.what();
    }
}

INSTANTIATE_TEST_SUITE_P(Csv, CsvRefuses,
                         testing::Values(Broken{"QuoteInBareCell", "a,b\nc\"d,e\n", 2},
                                         Broken{"TextAfterQuote", "a,b\n\"c\"d,e\n", 2},
                                         Broken{"OpenQuote", "a,b\n\n\"c,d\ne,f\n", 3},
                                         Broken{"LoneCarriageReturn", "a,b\rc,d\n", 1}),
                         [](const auto& each) { return each.param.name; });

} // namespace
