#include "app/words/sun_words.hpp"

#include "tests/app/words/told_garden.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

using std::chrono::July;
using std::chrono::year;

std::string told(double sun_h, double after_h,
                 std::chrono::year_month_day date = year{2025} / July / 14)
{
    const Told told("en_GB");
    model::light::PlantingSun now;
    now.planting = "bed";
    now.openSky_h = 14.0;
    now.sun_h = sun_h;
    now.withoutTrees_h = 13.0;
    now.trees = {{"apple", 8.8, 4.6}};
    model::light::PlantingSun after = now;
    after.sun_h = after_h;
    return shown(sentence(now, &after, date, told.garden, beans(), told.units));
}

TEST(SunWords, SayWhatThePlantNeedsAndWhatEachTreeTakes)
{
    EXPECT_EQ(told(4.2, 5.0),
              "“Bean bed”: 4.2 h of direct sun on a clear day, of 14 h under an open sky. That "
              "is less than the 6 h that French bean needs. Taken by trees: “Old apple” 4.6 h. "
              "After the cuts: 5 h.");
}

TEST(SunWords, SayWhenItIsEnough)
{
    EXPECT_NE(told(9.0, 9.0).find("enough for French bean"), std::string::npos);
    EXPECT_EQ(told(9.0, 9.0).find("After"), std::string::npos);
}

// The table's hours are those of the growing season.
TEST(SunWords, DoNotJudgeAWintersDay)
{
    const auto words = told(1.0, 1.0, year{2025} / std::chrono::January / 14);
    EXPECT_EQ(words.find("less than"), std::string::npos);
    EXPECT_NE(words.find("What French bean needs counts from April to September, not in January."),
              std::string::npos)
        << words;
}

} // namespace
} // namespace app
