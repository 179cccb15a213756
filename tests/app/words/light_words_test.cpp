#include "app/words/light_words.hpp"

#include "tests/app/words/told_garden.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

using model::light::LightClass;
using model::light::LightTaken;
using model::light::Suits;

model::light::SurfaceLight bedLight(double sun_h, Suits suits)
{
    model::light::SurfaceLight light;
    light.planting = "bed";
    light.growingSeason.open = {12.4, 50.0};
    light.growingSeason.standing = {sun_h, 31.0};
    light.clearSun_h = sun_h;
    light.lightClass = model::light::lightClass(sun_h);
    light.suits = suits;
    return light;
}

TEST(LightWords, SayTheSeasonAndWhetherItIsEnough)
{
    const Told told("en_GB");
    EXPECT_EQ(
        shown(seasonSentence(bedLight(4.5, Suits::tooDark), told.garden, beans(), told.units)),
        "April to September: part sun. Under a clear sky 4.5 h of direct sun a day. In the "
        "open it would be 12.4 h. Light for growth is 31 mol a day, of 50 mol. That is less "
        "than the 6 h that French bean needs.");
    EXPECT_NE(shown(seasonSentence(bedLight(7.0, Suits::barely), told.garden, beans(), told.units))
                  .find("French bean lives with that, and does better with 8 h."),
              std::string::npos);
}

TEST(LightWords, TellCloudsApartFromTrees)
{
    const Told told("en_GB");
    auto light = bedLight(4.5, Suits::tooDark);
    light.growingSeason.standing.sun_h = 1.8;
    light.growingSeason.open.sun_h = 5.0;
    EXPECT_NE(shown(seasonSentence(light, told.garden, beans(), told.units))
                  .find("With this garden's clouds 1.8 h, of 5 h in the open."),
              std::string::npos);
}

TEST(LightWords, NameTheLimbsThatTakeMost)
{
    const Told told("en_GB");
    model::light::MonthLight season;
    season.trees = {LightTaken{{2.0, 8.0}, {2.0, 8.0}}};
    season.limbs = {{LightTaken{{2.0, 8.0}, {2.0, 8.0}}, LightTaken{{0.5, 2.0}, {0.6, 2.1}},
                     LightTaken{{0.01, 0.0}, {0.02, 0.0}}}};
    const auto sentences = takenSentences(season, told.garden, told.units);
    ASSERT_EQ(sentences.size(), 1);
    EXPECT_EQ(shown(sentences.front()), "“Old apple”: without it 2 h of sun and 8 mol a day more. "
                                        "Limb by limb: “West limb” 30 min.");
}

TEST(LightWords, SayWhatLiesInTheShadeOfOthersToo)
{
    const Told told("en_GB");
    model::light::MonthLight season;
    season.trees = {LightTaken{{0.5, 2.0}, {1.5, 6.0}}};
    const auto sentence = takenSentences(season, told.garden, told.units).front();
    EXPECT_NE(shown(sentence).find("By itself it would take 1.5 h: the rest lies in the shade of "
                                   "other trees too."),
              std::string::npos);
}

TEST(LightWords, GiveACutItsPrice)
{
    const Told told("en_GB");
    model::CutLight cut;
    cut.tree = "apple";
    cut.cut.kind = model::CutKind::removal;
    cut.cut.limb = "west";
    cut.leafShare = 0.11;
    cut.gained = {0.9, 2.4};
    cut.perPercent = {0.9 / 11.0, 2.4 / 11.0};
    EXPECT_EQ(shown(cutSentence(cut, told.garden, told.units)),
              "Take off “West limb” of “Old apple”: 54 min of sun and 2.4 mol a day for 11 % of "
              "its leaf, 4.9 min of sun for each percent.");
    EXPECT_EQ(shown(cutTitle(cut, told.garden, told.units)), "Take off “West limb”");
}

TEST(LightWords, NameTheFacesOfAHedge)
{
    Told told("en_GB");
    told.garden.plantings[0].kind = model::PlantingKind::hedge;
    told.garden.plantings[0].height_m = 1.8;
    auto light = bedLight(4.0, Suits::well);
    EXPECT_EQ(shown(surfaceName(light, told.garden)), "“Bean bed”, its top");
    light.facing_deg = 224.0;
    EXPECT_EQ(shown(surfaceName(light, told.garden)), "“Bean bed”, its south-west face");
}

TEST(LightWords, KnowTheGrowingMonthsOfBothHemispheres)
{
    const Told told("en_GB");
    EXPECT_EQ(
        growingMonthsWords(model::Place{50.0, 0.0, 0.0, {}, {}, {}}, told.units).toStdString(),
        "April to September");
    EXPECT_EQ(
        growingMonthsWords(model::Place{-35.0, 0.0, 0.0, {}, {}, {}}, told.units).toStdString(),
        "October to March");
}

} // namespace
} // namespace app
