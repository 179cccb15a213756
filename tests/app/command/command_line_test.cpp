#include "app/command/command_line.hpp"
#include "tests/outside/outside_check.hpp"

#include "app/tables/tables.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <sstream>

namespace app {
namespace {

const std::string kGarden = std::string(UNDERBOUGH_TREES) + "/examples/apple-path.json";
const std::string kMaple = std::string(UNDERBOUGH_TREES) + "/examples/maple-drive.json";

/// What one run of the command line left behind.
struct Ran {
    int status{};
    std::string out;
    std::string err;
    std::optional<QString> window;
};

Ran run(const std::vector<std::string>& words, const std::string& typedIn = {})
{
    QStringList arguments;
    for (const std::string& word : words)
        arguments << QString::fromStdString(word);
    std::istringstream in(typedIn);
    std::ostringstream out;
    std::ostringstream err;
    const auto result = runCommandLine(arguments, &loadTables, {in, out, err});
    return {result.status, out.str(), err.str(), result.windowGarden};
}

std::string contents(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

TEST(CommandLine, WithoutAVerbWantsTheWindow)
{
    const auto example = run({});
    ASSERT_TRUE(example.window);
    EXPECT_TRUE(example.window->isEmpty());
    const auto own = run({kGarden});
    ASSERT_TRUE(own.window);
    EXPECT_EQ(own.window->toStdString(), kGarden);
}

TEST(CommandLine, TellsATypingErrorFromAFile)
{
    const auto mistyped = run({"asess"});
    EXPECT_EQ(mistyped.status, 2);
    EXPECT_FALSE(mistyped.window);
    EXPECT_NE(mistyped.err.find("neither a command nor a file"), std::string::npos);
}

TEST(CommandLine, HelpsOnEachVerb)
{
    EXPECT_NE(run({"--help"}).out.find("assess"), std::string::npos);
    for (const char* verb : {"assess", "suggest", "headroom", "light", "day", "sun", "check"}) {
        const auto help = run({verb, "--help"});
        EXPECT_EQ(help.status, 0) << verb;
        EXPECT_NE(help.out.find("--help"), std::string::npos) << verb;
    }
    EXPECT_EQ(run({"--version"}).out, "underbough " UNDERBOUGH_VERSION "\n");
}

TEST(CommandLine, RefusesInOneLine)
{
    const std::vector<std::vector<std::string>> refused{
        {"suggest", kGarden, "--relief", "much"},
        {"suggest", kGarden, "--sun", "no-such-bed=4"},
        {"suggest", kGarden, "--sun", "tomato-bed=many"},
        {"suggest", kGarden, "--dli", "tomato-bed=200"},
        {"suggest", kGarden, "--bear", "a breeze"},
        {"suggest", kGarden, "--leaf", "300 %"},
        {"suggest", kGarden, "--spare", "-1 m"},
        {"day", "--air", "warm"},
        {"assess"},
        {"assess", "no-such-file.json"},
        {"assess", std::string(UNDERBOUGH_TESTS)},
        {"assess", kGarden, "--gust", "fast"},
        {"assess", kGarden, "--gust", "400 km/h"},
        {"assess", kGarden, "--gust", "-3"},
        {"assess", kGarden, "--gust", "force 13"},
        {"assess", kGarden, "--air", "warm"},
        {"assess", kGarden, "--air", "200 C"},
        {"assess", kGarden, "--explain", "twig"},
        {"assess", kGarden, "--date", "14/7/2025"},
        {"assess", kGarden, "--date", "2025-02-30"},
        {"assess", kGarden, "--date", "1066-10-14"},
        {"assess", kGarden, "--tree", "oak"},
        {"assess", kGarden, "--units", "cubits"},
        {"assess", kGarden, "--colour"},
        {"assess", kGarden, "another.json"},
        {"sun", "--lat", "91", "--lon", "0"},
        {"sun", "--lat", "nan", "--lon", "0"},
        {"sun", "--lat", "50", "--lon", "-181"},
        {"sun", "--lat", "50", "--lon", "0", "--at", "noon"},
        {"sun", "--lat", "50"},
    };
    for (const auto& words : refused) {
        const auto ran = run(words);
        EXPECT_EQ(ran.status, 2) << words.back();
        EXPECT_TRUE(ran.out.empty()) << words.back();
        EXPECT_EQ(std::ranges::count(ran.err, '\n'), 1) << ran.err;
    }
}

TEST(CommandLine, NamesTheTreesWhenNoneIsMeant)
{
    EXPECT_NE(run({"suggest", kGarden, "--tree", "oak"}).err.find("the old cooking apple"),
              std::string::npos);
    EXPECT_EQ(run({"suggest", kGarden, "--tree", "THE OLD COOKING APPLE"}).status, 0);
}

TEST(CommandLine, ReadsStandardInput)
{
    const auto piped = run({"check", "-"}, contents(kGarden));
    EXPECT_EQ(piped.status, 0);
    EXPECT_NE(piped.out.find("standard input: can be used"), std::string::npos);
    EXPECT_NE(run({"check", "-"}, "[").err.find("standard input: "), std::string::npos);
}

TEST(CommandLine, StopsReadingWhatNeverEnds)
{
    const auto endless = run({"check", "/dev/zero"});
    EXPECT_EQ(endless.status, 2);
    EXPECT_NE(endless.err.find("MB"), std::string::npos);
}

TEST(CommandLine, ChecksTellEveryFault)
{
    auto garden = nlohmann::ordered_json::parse(contents(kGarden));
    garden["place"]["latitude_deg"] = 91;
    garden["design_gust_m_s"] = -1;
    const auto all = run({"check", "-"}, garden.dump());
    EXPECT_EQ(all.status, 2);
    EXPECT_NE(all.err.find("/place/latitude_deg"), std::string::npos);
    EXPECT_NE(all.err.find("/design_gust_m_s"), std::string::npos);
    const auto first = run({"assess", "-"}, garden.dump());
    EXPECT_NE(first.err.find("(and 1 more fault)"), std::string::npos) << first.err;
}

TEST(CommandLine, ReportsFieldsItDoesNotKnow)
{
    auto garden = nlohmann::ordered_json::parse(contents(kGarden));
    garden["trees"][0]["limbs"][0]["colour"] = "grey";
    const auto checked = run({"check", "-"}, garden.dump());
    EXPECT_EQ(checked.status, 0);
    EXPECT_NE(checked.out.find("/trees/0/limbs/0/colour"), std::string::npos) << checked.out;
    const auto json = nlohmann::json::parse(run({"check", "-", "--json"}, garden.dump()).out);
    EXPECT_EQ(json["unknown_fields"][0], "/trees/0/limbs/0/colour");
}

TEST(CommandLine, TakesAGustInAnyUnit)
{
    const auto gust = [](const char* text) {
        const auto ran = run({"assess", kGarden, "--json", "--gust", text});
        return nlohmann::json::parse(ran.out)["gust_m_s"].get<double>();
    };
    EXPECT_EQ(gust("30"), 30.0);
    EXPECT_EQ(gust("108 km/h"), 30.0);
    EXPECT_NEAR(gust("60 mph"), 26.8224, 1e-9);
}

TEST(CommandLine, TakesAGustInTheWordsOfAForecast)
{
    const auto json = [](const char* words) {
        return nlohmann::json::parse(run({"assess", kGarden, "--json", "--gust", words}).out);
    };
    const auto force = json("Force 9");
    EXPECT_EQ(force["gust_force"], 9);
    EXPECT_NEAR(force["gust_m_s"].get<double>(), 32.58, 0.01);
    EXPECT_NE(force["gust_source"].get<std::string>().find("Beaufort"), std::string::npos);
    EXPECT_NEAR(json("severe thunderstorm us")["gust_m_s"].get<double>(), 25.93, 0.01);
    EXPECT_TRUE(json("30")["gust_source"].is_null());
    const auto text = run({"assess", kGarden, "--gust", "gusts of force 9"}).out;
    EXPECT_NE(text.find("Gusts of force 9, severe gale are taken as"), std::string::npos) << text;
}

// Law: the same gust of colder air pulls harder, in the ratio of the absolute temperatures.
TEST(CommandLine, LoadsHarderInColdAir)
{
    const auto wind = [](const char* air) {
        const auto ran = run({"assess", kGarden, "--json", "--date", "2025-01-20", "--air", air});
        return nlohmann::json::parse(ran.out)["trees"][0]["limbs"][0]["wind_N"].get<double>();
    };
    EXPECT_NEAR(wind("-5 C") / wind("41 F"), 278.15 / 268.15, 1e-5);
}

TEST(CommandLine, ExplainsALimbFromTheWindToItsFigures)
{
    const std::vector<std::string> asked{"assess",    kMaple,      "--gust", "30",
                                         "--explain", "WEST stem", "--date", "2025-07-14"};
    const auto text = run(asked);
    EXPECT_EQ(text.status, 0) << text.err;
    for (const char* part :
         {"The wind", "The weight", "What the wood bears", "[L4", "Kane", "The gust that breaks it",
          "The range is as wide", "not an inspection"})
        EXPECT_NE(text.out.find(part), std::string::npos) << part;
    auto asJson = asked;
    asJson.emplace_back("--json");
    const auto json = nlohmann::json::parse(run(asJson).out);
    EXPECT_EQ(json["format"], "underbough-explanation");
    const auto whole = nlohmann::json::parse(
        run({"assess", kMaple, "--gust", "30", "--date", "2025-07-14", "--json"})
            .out)["trees"][0]["limbs"];
    const auto same =
        std::ranges::find(whole, json["limb"], [](const auto& limb) { return limb["id"]; });
    ASSERT_NE(same, whole.end());
    EXPECT_EQ(json["steps"].back()["quantity"], "utilisation");
    EXPECT_EQ(json["steps"].back()["value"], (*same)["utilisation"]);
    EXPECT_EQ(json["breaking_gust"], (*same)["breaking_gust"]);
}

TEST(CommandLine, NamesTheLimbsWhenNoneIsMeant)
{
    EXPECT_NE(run({"assess", kGarden, "--explain", "twig"}).err.find("path limb"),
              std::string::npos);
}

TEST(CommandLine, ExplainsADeadLimbAsWorkForAProfessional)
{
    auto garden = nlohmann::ordered_json::parse(contents(kGarden));
    auto& limb = garden["trees"][0]["limbs"].back();
    limb["defects"] = nlohmann::json::array({{{"kind", "dead"}, {"at_m", 0.1}}});
    const auto id = limb["id"].get<std::string>();
    const auto text = run({"assess", "-", "--explain", id}, garden.dump());
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_NE(text.out.find("none is counted on"), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("professional"), std::string::npos);
    const auto json =
        nlohmann::json::parse(run({"assess", "-", "--explain", id, "--json"}, garden.dump()).out);
    EXPECT_EQ(json["has_strength"], false);
    EXPECT_TRUE(json["breaking_gust"].is_null());
    EXPECT_EQ(json["steps"].back()["quantity"], "strength");
    EXPECT_EQ(json["steps"].back()["value"], 0.0);
}

nlohmann::json suggested(std::vector<std::string> more)
{
    std::vector<std::string> words{"suggest", kGarden, "--date", "2026-02-01", "--json"};
    words.insert(words.end(), more.begin(), more.end());
    const auto ran = run(words);
    EXPECT_EQ(ran.status, 0) << ran.err;
    return nlohmann::json::parse(ran.out)["trees"][0]["suggestion"];
}

/// The apple with a broken limb, suggested for.
TEST(CommandLine, CleansFirstAndSaysSo)
{
    auto garden = nlohmann::ordered_json::parse(contents(kGarden));
    auto& limb = garden["trees"][0]["limbs"].back();
    limb["defects"] = nlohmann::json::array({{{"kind", "broken"}, {"at_m", 0.02}}});
    const std::string kDay = "2026-07-01";
    const auto text = run({"suggest", "-", "--date", kDay}, garden.dump());
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_NE(text.out.find("1. Cleaning, broken wood, removal cut."), std::string::npos)
        << text.out;
    EXPECT_NE(text.out.find("Clean first: "), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("Before and after"), std::string::npos);
    const auto json =
        nlohmann::json::parse(run({"suggest", "-", "--date", kDay, "--json"}, garden.dump()).out);
    const auto& cuts = json["trees"][0]["suggestion"]["cuts"];
    EXPECT_EQ(cuts[0]["limb"], limb["id"]);
    EXPECT_EQ(cuts[0]["cleans"], true);
    EXPECT_EQ(cuts[0]["fault"], "broken");
    EXPECT_EQ(cuts[0]["leaf_share"], 0.0);
}

TEST(CommandLine, TakesTheWishForAnOpenMiddleOfAFruitTree)
{
    const auto plan = suggested({"--open-centre"});
    ASSERT_EQ(plan["goals"].size(), 1U);
    EXPECT_EQ(plan["goals"][0]["kind"], "open_centre");
    EXPECT_EQ(plan["goals"][0]["wanted"], 0.0);
    EXPECT_NE(plan["goals"][0]["state"], "left_aside");
}

TEST(CommandLine, ExportsNoJsonUnderTheNameOfAGardenFile)
{
    const auto ran = run({"export", kGarden, "copy.underbough"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_NE(ran.err.find("copy.underbough: found the ending of a garden file"), std::string::npos)
        << ran.err;
    EXPECT_FALSE(std::ifstream("copy.underbough").good());
}

TEST(CommandLine, SaysWhatAReportWasWrittenTo)
{
    const std::string file = testing::TempDir() + "visits.csv";
    const auto ran = run({"report", kGarden, "--csv", "visits", "-o", file});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.out, file + ": written.\n");
    EXPECT_NE(run({"report", kGarden, "--csv", "visits", "-o", "-"}).out.substr(0, 4), "-: w");
}

TEST(CommandLine, TakesGoalsForASuggestion)
{
    const auto plain = suggested({});
    EXPECT_TRUE(plain["goals"].empty());
    const auto kept = suggested({"--keep", "path-limb", "--leaf", "18 %"});
    ASSERT_EQ(kept["goals"].size(), 2U);
    for (const auto& cut : kept["cuts"])
        EXPECT_NE(cut["limb"], "path-limb");
    EXPECT_LE(kept["leaf_share"].get<double>(), 0.18 + 1e-9);
    const auto aside = suggested({"--lose", "no-such-limb"});
    EXPECT_EQ(aside["goals"][0]["state"], "left_aside");
    EXPECT_EQ(aside["leaf_share"], plain["leaf_share"]);
    const auto bright = suggested({"--dli", "tomato-bed=15", "--bear", "90 km/h"});
    ASSERT_EQ(bright["goals"].size(), 2U);
    EXPECT_EQ(bright["goals"][0]["kind"], "gust");
    EXPECT_DOUBLE_EQ(bright["goals"][0]["wanted"].get<double>(), 25.0);
    EXPECT_GT(bright["goals"][0]["before"].get<double>(), 5.0);
    EXPECT_EQ(bright["goals"][1]["kind"], "dli");
    EXPECT_GT(bright["goals"][1]["before"].get<double>(), 1.0);
    EXPECT_GE(bright["goals"][1]["after"].get<double>(),
              bright["goals"][1]["before"].get<double>());
    const auto roomy = suggested({"--spare", "30 cm"});
    EXPECT_DOUBLE_EQ(roomy["spare_m"].get<double>(), 0.3);
}

TEST(CommandLine, ChecksTheDay)
{
    const auto hot = run({"day", "--air", "39 C", "--humidity", "50 %", "--gust", "12 m/s",
                          "--units", "metric", "--fail-on-attention"});
    EXPECT_EQ(hot.status, 1);
    EXPECT_NE(hot.out.find("Leave it for another day"), std::string::npos);
    EXPECT_NE(hot.out.find("Gusts of"), std::string::npos);
    const auto mild = run({"day", "--air", "60 F", "--fail-on-attention"});
    EXPECT_EQ(mild.status, 0);
    EXPECT_EQ(mild.out.find("safe to"), std::string::npos);
    EXPECT_NE(mild.out.find("Before you trust"), std::string::npos);
}

TEST(CommandLine, AnswersTheSameBytesTwice)
{
    const std::vector<std::string> words{"assess", kGarden, "--json", "--date", "2025-07-14"};
    EXPECT_EQ(run(words).out, run(words).out);
}

TEST(CommandLine, EndsEveryAnswerWithTheCautions)
{
    for (const char* verb : {"assess", "suggest", "headroom", "light"}) {
        EXPECT_NE(run({verb, kGarden}).out.find("not an inspection"), std::string::npos) << verb;
        const auto json = nlohmann::json::parse(run({verb, kGarden, "--json"}).out);
        EXPECT_GE(json["cautions"].size(), 5U) << verb;
    }
}

TEST(CommandLine, ExitsWithOneOnlyWhenAsked)
{
    auto garden = nlohmann::ordered_json::parse(contents(kGarden));
    garden["strips"][0]["headroom_m"] = 5.5;
    EXPECT_EQ(run({"headroom", "-"}, garden.dump()).status, 0);
    EXPECT_EQ(run({"headroom", "-", "--fail-on-attention"}, garden.dump()).status, 1);
}

// Published: Reda & Andreas 2008, NREL/TP-560-34302, table A5.1 (Golden, Colorado, 2003-10-17
// 12:30:30 UTC-7): topocentric zenith 50.11162 with refraction at 820 hPa and 11 C, azimuth
// 194.34024; without refraction the elevation is 39.872046. Seen quoted, not in the report.
TEST(CommandLine, PlacesTheSunAsThePublishedExample)
{
    const auto ran = run(
        {"sun", "--lat", "39.742476", "--lon", "-105.1786", "--at", "2003-10-17T12:30:30-07:00"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto sun = nlohmann::json::parse(ran.out);
    OUTSIDE_NEAR(sun["elevation_deg"].get<double>(), 39.872046, 0.01);
    OUTSIDE_NEAR(sun["azimuth_deg"].get<double>(), 194.34024, 0.01);
    OUTSIDE_NEAR(sun["apparent_elevation_deg"].get<double>(), 90 - 50.11162, 0.01);
    EXPECT_EQ(sun["at"], "2003-10-17T19:30:30.000Z");
}

TEST(CommandLine, TakesATimeWithoutAZoneAsUtc)
{
    const auto at = [](const char* time) {
        return run({"sun", "--lat", "-33.9", "--lon", "18.4", "--at", time}).out;
    };
    EXPECT_EQ(at("2025-06-21T10:00:00"), at("2025-06-21T10:00:00Z"));
    EXPECT_EQ(at("2025-06-21T12:00:00+02:00"), at("2025-06-21T10:00:00Z"));
}

} // namespace
} // namespace app
