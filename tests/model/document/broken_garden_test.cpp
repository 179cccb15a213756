#include "model/document/garden_json.hpp"
#include "model/document/limits.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

using namespace model;

namespace {

const std::string kFolder = std::string(UNDERBOUGH_TESTS) + "/broken/";

std::string contents(const std::string& file)
{
    std::ifstream stream(kFolder + file, std::ios::binary);
    EXPECT_TRUE(stream) << file;
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

struct Expected {
    std::string file;
    std::string pointer;
    std::string part; ///< of the first fault's line
};

std::vector<Expected> table()
{
    std::vector<Expected> rows;
    std::istringstream lines(contents("expected.tsv"));
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("#"))
            continue;
        std::istringstream cells(line);
        Expected row;
        std::getline(cells, row.file, '\t');
        std::getline(cells, row.pointer, '\t');
        std::getline(cells, row.part);
        rows.push_back(row);
    }
    return rows;
}

Fault onlyFault(const std::string& text)
{
    const auto reading = readGarden(text);
    EXPECT_FALSE(reading.garden);
    EXPECT_EQ(reading.faults.size(), 1U);
    return reading.faults.empty() ? Fault() : reading.faults.front();
}

} // namespace

TEST(BrokenGarden, EachFileIsToldInOneLineWithItsPlace)
{
    const auto rows = table();
    EXPECT_GE(rows.size(), 40U);
    for (const auto& [file, pointer, part] : rows) {
        const auto reading = readGarden(contents(file));
        EXPECT_FALSE(reading.garden) << file;
        ASSERT_FALSE(reading.faults.empty()) << file;
        const auto line = oneLine(reading.faults.front());
        EXPECT_EQ(reading.faults.front().pointer, pointer) << file << ": " << line;
        EXPECT_NE(line.find(part), std::string::npos) << file << ": " << line;
        EXPECT_EQ(line.find('\n'), std::string::npos) << file;
    }
}

TEST(BrokenGarden, TheWholeGardenThatTheyBreakIsGood)
{
    const auto reading = readGarden(contents("whole.json"));
    EXPECT_TRUE(reading.garden) << oneLine(reading.faults.front());
}

// However a file is cut short, it is refused (only the last line break may be missing).
TEST(BrokenGarden, EveryCutShortFileIsRefused)
{
    const auto whole = contents("whole.json");
    for (std::size_t kept = 0; kept + 1 < whole.size(); kept += 7) {
        const auto reading = readGarden(std::string_view(whole).substr(0, kept));
        EXPECT_FALSE(reading.garden) << kept;
        EXPECT_EQ(reading.faults.size(), 1U) << kept;
    }
}

// No single changed byte crashes the reader, and a refusal always says why.
TEST(BrokenGarden, AnyChangedByteIsReadOrRefused)
{
    const auto whole = contents("whole.json");
    for (std::size_t at = 0; at < whole.size(); at += 3) {
        for (const char byte : {'\0', '"', '{', ']', '-', '9', '\xC3', '\xFF'}) {
            auto changed = whole;
            changed[at] = byte;
            const auto reading = readGarden(changed);
            EXPECT_NE(reading.garden.has_value(), !reading.faults.empty()) << at;
        }
    }
}

TEST(BrokenGarden, DeepNestingIsRefusedAtTheLimit)
{
    const auto fault = onlyFault(std::string(1'000'000, '['));
    EXPECT_EQ(fault.pointer.size(), 2 * limits::kNesting);
    EXPECT_NE(fault.found.find("more than 32 deep"), std::string::npos);

    std::string nested = "1";
    for (std::size_t level = 1; level < limits::kNesting; ++level)
        nested = "[" + nested + "]";
    const std::string head = R"({"format": "underbough-garden", "version": 1, "design_gust_m_s": 9,
        "place": {"latitude_deg": 1, "longitude_deg": 2}, "x": )";
    EXPECT_TRUE(readGarden(head + nested + "}").garden);
    EXPECT_EQ(onlyFault(head + "[" + nested + "]}").found, "lists or objects more than 32 deep");
}

TEST(BrokenGarden, ThreeHundredMegabytesAreRefusedUnread)
{
    const std::string huge(300'000'000, ' ');
    EXPECT_NE(onlyFault(huge).expected.find("32 MB"), std::string::npos);
}

TEST(BrokenGarden, MoreValuesThanAGardenHasAreRefused)
{
    std::string many = "[0";
    many.reserve(2 * limits::kValues + 2);
    for (std::size_t i = 0; i < limits::kValues; ++i)
        many += ",0";
    EXPECT_EQ(onlyFault(many + "]").found, "more than 2000000 values");
}

TEST(BrokenGarden, FaultsAreToldUpToALimit)
{
    std::string many = R"({"format": "underbough-garden", "version": 1, "trees": [1)";
    for (int i = 0; i < 150; ++i)
        many += ",1";
    EXPECT_EQ(readGarden(many + "]}").faults.size(), limits::kFaults);
}
