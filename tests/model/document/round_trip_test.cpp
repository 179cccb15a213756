#include "model/document/garden_json.hpp"
#include "model/document/validate.hpp"
#include "tests/model/document/random_garden.hpp"

#include <gtest/gtest.h>

#include <clocale>
#include <limits>
#include <stdexcept>

using namespace model;

namespace {

std::string firstLine(const std::vector<Fault>& faults)
{
    return faults.empty() ? "no fault" : oneLine(faults.front());
}

Garden smallGarden()
{
    Garden garden;
    garden.designGust_m_s = 25.0;
    Tree tree;
    tree.id = "pear";
    tree.species = "Pyrus communis";
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0.0, 0.0, 0.0}, 0.2}, {{0.0, 0.0, 3.0}, 0.1}};
    tree.limbs = {trunk};
    garden.trees = {tree};
    return garden;
}

} // namespace

// Law: write, read, write gives the same bytes and the same value.
TEST(RoundTrip, EveryRandomGardenSurvives)
{
    for (std::uint32_t seed = 1; seed <= 500; ++seed) {
        const auto garden = randomGarden(seed);
        const auto faults = validate(garden);
        ASSERT_TRUE(faults.empty()) << "seed " << seed << ": " << firstLine(faults);
        const auto text = writeGarden(garden);
        const auto reading = readGarden(text);
        ASSERT_TRUE(reading.garden) << "seed " << seed << ": " << firstLine(reading.faults);
        ASSERT_TRUE(*reading.garden == garden) << "seed " << seed;
        ASSERT_EQ(writeGarden(*reading.garden), text) << "seed " << seed;
    }
}

TEST(RoundTrip, KeepsTheHardestNumbers)
{
    using Limits = std::numeric_limits<double>;
    for (const double hard : {-0.0, 0.1, 1.0 / 3.0, 5e-324, Limits::min(), Limits::epsilon(), 1e-7,
                              1234.56789, 0.1 + 0.2, 299.99999999999994}) {
        auto garden = smallGarden();
        garden.trees.front().position_m = {hard, -hard};
        const auto reading = readGarden(writeGarden(garden));
        ASSERT_TRUE(reading.garden) << firstLine(reading.faults);
        const auto back = reading.garden->trees.front().position_m;
        EXPECT_EQ(back.x, hard);
        EXPECT_EQ(std::signbit(back.x), std::signbit(hard)) << hard;
        EXPECT_EQ(writeGarden(*reading.garden), writeGarden(garden)) << hard;
    }
}

TEST(RoundTrip, KeepsUnknownFieldsOfEveryObjectWithTheirDigits)
{
    const std::string text = R"({"format": "underbough-garden", "version": 1,
        "place": {"latitude_deg": 1, "longitude_deg": 2, "geoid": "EGM96"},
        "design_gust_m_s": 20, "soil_ph": 6.50, "big": 123456789012345678901234567890,
        "trees": [{"id": "a", "species": "b", "position_m": [0, 0], "tag": {"no": [1, 2.0]},
          "limbs": [{"id": "t", "bark": "rough", "stations": [
            {"position_m": [0, 0, 0], "diameter_m": 0.2, "tape": null},
            {"position_m": [0, 0, 2], "diameter_m": 0.1}]}]}]})";
    const auto reading = readGarden(text);
    ASSERT_TRUE(reading.garden) << firstLine(reading.faults);
    const auto& garden = *reading.garden;
    EXPECT_EQ(garden.extras.at("soil_ph"), "6.50");
    EXPECT_EQ(garden.extras.at("big"), "123456789012345678901234567890");
    EXPECT_EQ(garden.place.extras.at("geoid"), "\"EGM96\"");
    EXPECT_EQ(garden.trees[0].extras.at("tag"), R"({"no": [1, 2.0]})");
    EXPECT_EQ(garden.trees[0].limbs[0].extras.at("bark"), "\"rough\"");
    EXPECT_EQ(garden.trees[0].limbs[0].stations[0].extras.at("tape"), "null");
    EXPECT_EQ(*readGarden(writeGarden(garden)).garden, garden);
}

TEST(RoundTrip, TakesWindowsLineEndsAndAByteOrderMark)
{
    const auto text = writeGarden(smallGarden());
    std::string windows = "\xEF\xBB\xBF";
    for (const char c : text)
        windows += c == '\n' ? std::string("\r\n") : std::string(1, c);
    const auto reading = readGarden(windows);
    ASSERT_TRUE(reading.garden) << firstLine(reading.faults);
    EXPECT_EQ(*reading.garden, smallGarden());
}

TEST(RoundTrip, FillsInWhatMayBeLeftOut)
{
    const auto reading = readGarden(R"({"format": "underbough-garden", "version": 1,
        "place": {"latitude_deg": 1, "longitude_deg": 2}, "design_gust_m_s": 20})");
    ASSERT_TRUE(reading.garden) << firstLine(reading.faults);
    EXPECT_EQ(reading.garden->exposure, Exposure::scattered);
    EXPECT_TRUE(reading.garden->trees.empty());
}

TEST(RoundTrip, ReadsAndWritesAlikeWhereNumbersHaveCommas)
{
    const std::string before = std::setlocale(LC_NUMERIC, nullptr);
    if (std::setlocale(LC_NUMERIC, "de_DE.UTF-8") == nullptr)
        GTEST_SKIP() << "the machine has no de_DE.UTF-8 locale";
    auto garden = randomGarden(7);
    garden.extras["ph"] = "6.50";
    const auto text = writeGarden(garden);
    const auto reading = readGarden(text);
    std::setlocale(LC_NUMERIC, before.c_str());
    EXPECT_EQ(text, writeGarden(garden));
    ASSERT_TRUE(reading.garden) << firstLine(reading.faults);
    EXPECT_EQ(*reading.garden, garden);
}

TEST(WriteGarden, RefusesWhatJsonCannotHold)
{
    auto garden = smallGarden();
    garden.designGust_m_s = std::numeric_limits<double>::quiet_NaN();
    EXPECT_THROW((void)writeGarden(garden), std::domain_error);
    garden = smallGarden();
    garden.extras["note"] = "{broken";
    EXPECT_THROW((void)writeGarden(garden), std::domain_error);
    garden.extras = {{"trees", "[]"}};
    EXPECT_THROW((void)writeGarden(garden), std::domain_error);
}

TEST(WriteGarden, LaysOutAStationOnALineForPeople)
{
    const auto text = writeGarden(smallGarden());
    EXPECT_NE(text.find("\n            {\"position_m\": [0, 0, 3], \"diameter_m\": 0.1}\n"),
              std::string::npos)
        << text;
}
