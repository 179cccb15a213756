#include "app/format/parse_degrees.hpp"
#include "app/place/cities.hpp"
#include "app/view/add_tree_view_model.hpp"
#include "app/view/name_search.hpp"
#include "app/view/new_garden_view_model.hpp"
#include "model/document/validate.hpp"
#include "tests/app/shipped_tables.hpp"

#include <QCoreApplication>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace app {
namespace {

// Rows as the tz database has them (public domain).
const QByteArray kTable = "# comment\n"
                          "CH,DE,LI\t+4723+00832\tEurope/Zurich\n"
                          "GB,GG\t+513030-0000731\tEurope/London\n"
                          "NZ,AQ\t-3652+17446\tPacific/Auckland\tNew Zealand time\n"
                          "US\t+404251-0740023\tAmerica/New_York\tEastern (most areas)\n"
                          "nonsense\n";

// Published: the tz database gives Zurich as 47 degrees 23 minutes north, 8 32 east. Distances:
// great circles of 776 km from Zurich to London and 5570 km from London to New York as atlases
// have them, to the nearest ten (common knowledge, no one source).
TEST(Cities, AreReadFromTheTimeZoneTable)
{
    const auto cities = readCities(kTable);
    ASSERT_EQ(cities.size(), 4u);
    EXPECT_EQ(cities[0].name, QStringLiteral("Zurich"));
    EXPECT_EQ(cities[0].country, QStringLiteral("Switzerland"));
    EXPECT_EQ(cities[0].zone, QStringLiteral("Europe/Zurich"));
    EXPECT_NEAR(cities[0].latitude_deg, 47.0 + 23.0 / 60.0, 1e-9);
    EXPECT_NEAR(cities[0].longitude_deg, 8.0 + 32.0 / 60.0, 1e-9);
    EXPECT_NEAR(cities[1].latitude_deg, 51.0 + 30.0 / 60.0 + 30.0 / 3600.0, 1e-9);
    EXPECT_LT(cities[1].longitude_deg, 0.0);
    EXPECT_NEAR(cities[2].latitude_deg, -(36.0 + 52.0 / 60.0), 1e-9);
    EXPECT_EQ(cities[3].name, QStringLiteral("New York"));
    EXPECT_NEAR(distance_km(cities[0], cities[1].latitude_deg, cities[1].longitude_deg), 776, 5);
    EXPECT_NEAR(distance_km(cities[1], cities[3].latitude_deg, cities[3].longitude_deg), 5570, 10);
}

TEST(Cities, TheNearestIsFoundAcrossTheDateLine)
{
    const auto cities = readCities(kTable);
    EXPECT_EQ(nearestCity(cities, -40.0, -179.0)->name, QStringLiteral("Auckland"));
    EXPECT_EQ(nearestCity(cities, 46.9, 7.4)->name, QStringLiteral("Zurich"));
    EXPECT_EQ(nearestCity({}, 46.9, 7.4), nullptr);
}

TEST(Cities, TheSystemsOwnTableHasThem)
{
    const auto cities = systemCities();
    EXPECT_GT(cities.size(), 300u);
    EXPECT_NE(std::ranges::find(cities, QStringLiteral("Europe/Oslo"), &City::zone), cities.end());
}

TEST(Degrees, AreReadAsPeopleWriteThem)
{
    const QLocale english(QLocale::English);
    const auto north = [&](const char* text) {
        return parseDegrees(QString::fromUtf8(text), english, 'N', 'S').value_or(999.0);
    };
    EXPECT_DOUBLE_EQ(north("47.38"), 47.38);
    EXPECT_DOUBLE_EQ(north("-33.9"), -33.9);
    EXPECT_DOUBLE_EQ(north("33.9 S"), -33.9);
    EXPECT_DOUBLE_EQ(north("S 33.9"), -33.9);
    EXPECT_NEAR(north("47°22'12\" N"), 47.37, 1e-9);
    EXPECT_NEAR(north("47 22 12"), 47.37, 1e-9);
    EXPECT_EQ(north("forty"), 999.0);
    EXPECT_EQ(north("47 70"), 999.0);
    EXPECT_EQ(north("47.5 30"), 999.0);
    EXPECT_EQ(north("-33.9 S"), 999.0);
    EXPECT_EQ(north(""), 999.0);
    EXPECT_DOUBLE_EQ(*parseDegrees(QStringLiteral("8,5"), QLocale(QLocale::German), 'E', 'W'), 8.5);
}

TEST(NameSearch, PutsWhatStartsSoFirstAndMindsNoAccents)
{
    const QStringList names{QStringLiteral("crab apple\nMalus sylvestris"),
                            QStringLiteral("apple\nMalus domestica"),
                            QStringLiteral("Bogotá\nColombia"), QStringLiteral("pineapple")};
    using Found = std::vector<std::size_t>;
    EXPECT_EQ(searchNames(names, QStringLiteral("app"), 8), (Found{1, 0, 3}));
    EXPECT_EQ(searchNames(names, QStringLiteral("malus"), 8), (Found{0, 1}));
    EXPECT_EQ(searchNames(names, QStringLiteral("dom mal"), 8), (Found{1}));
    EXPECT_EQ(searchNames(names, QStringLiteral("bogota"), 8), (Found{2}));
    EXPECT_EQ(searchNames(names, QStringLiteral("app"), 1), (Found{1}));
    EXPECT_TRUE(searchNames(names, QStringLiteral("fir"), 8).empty());
}

class StartTest : public ::testing::Test {
protected:
    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    NewGardenViewModel fresh_{workspace_, readCities(kTable), QStringLiteral("Europe/London")};
    AddTreeViewModel tree_{workspace_};
};

TEST_F(StartTest, AGardenStartsWhereTheClockOfTheComputerStands)
{
    EXPECT_EQ(fresh_.problem(), QString());
    fresh_.setName(QStringLiteral("Back garden"));
    ASSERT_TRUE(fresh_.start());
    const auto& garden = workspace_.garden();
    EXPECT_EQ(garden.name, "Back garden");
    EXPECT_EQ(garden.place.timeZone, "Europe/London");
    EXPECT_NEAR(garden.place.latitude_deg, 51.508, 1e-3);
    EXPECT_EQ(garden.exposure, model::Exposure::scattered);
    EXPECT_DOUBLE_EQ(garden.designGust_m_s, 25.0);
    EXPECT_TRUE(garden.trees.empty());
    EXPECT_TRUE(workspace_.document().path().isEmpty());
}

TEST_F(StartTest, ACityIsFoundByItsCountryToo)
{
    fresh_.setCityTyped(QStringLiteral("swit"));
    ASSERT_EQ(fresh_.cities(), QStringList(QStringLiteral("Zurich, Switzerland")));
    fresh_.takeCity(0);
    EXPECT_EQ(fresh_.latitude(), QStringLiteral("47.383"));
    EXPECT_EQ(fresh_.clockText(), QStringLiteral("By the clock of Zurich, Switzerland."));
    EXPECT_TRUE(fresh_.cities().isEmpty());
}

TEST_F(StartTest, ATypedPlaceTakesTheClockOfTheNearestCity)
{
    fresh_.setLatitude(QStringLiteral("41 S"));
    fresh_.setLongitude(QStringLiteral("174.8"));
    EXPECT_TRUE(fresh_.clockText().contains(QStringLiteral("Auckland")));
    EXPECT_TRUE(fresh_.cityTyped().isEmpty());
    ASSERT_TRUE(fresh_.start());
    EXPECT_DOUBLE_EQ(workspace_.garden().place.latitude_deg, -41.0);
    EXPECT_EQ(workspace_.garden().place.timeZone, "Pacific/Auckland");
}

TEST_F(StartTest, WhatIsMissingOfAGardenIsSaidInOneSentence)
{
    fresh_.setLatitude(QStringLiteral("120"));
    EXPECT_TRUE(fresh_.problem().startsWith(QStringLiteral("Latitude")));
    EXPECT_FALSE(fresh_.start());
    fresh_.setLatitude(QStringLiteral("12"));
    fresh_.setGust(QStringLiteral("strong"));
    EXPECT_TRUE(fresh_.problem().startsWith(QStringLiteral("Gust")));
    fresh_.setGust(QStringLiteral("100"));
    EXPECT_EQ(fresh_.gustChoice(), -1);
    EXPECT_EQ(fresh_.problem(), QString());
    fresh_.setName(QStringLiteral("  "));
    EXPECT_FALSE(fresh_.problem().isEmpty());
}

TEST_F(StartTest, EveryGustOfferedCanBeReadBack)
{
    for (int i = 0; i < fresh_.gusts().size(); ++i) {
        fresh_.setGustChoice(i);
        EXPECT_EQ(fresh_.problem(), QString()) << fresh_.gust().toStdString();
        EXPECT_EQ(fresh_.gustChoice(), i);
        EXPECT_FALSE(fresh_.gustWord().isEmpty());
    }
}

TEST_F(StartTest, ATreeComesOfItsKindAndItsGirth)
{
    ASSERT_TRUE(fresh_.start());
    tree_.reset();
    tree_.setTyped(QStringLiteral("apple"));
    ASSERT_FALSE(tree_.found().isEmpty());
    tree_.takeSpecies(0);
    EXPECT_EQ(tree_.species(), QStringLiteral("Malus domestica"));
    EXPECT_FALSE(tree_.problem().isEmpty());
    tree_.setStem(QStringLiteral("63"));
    EXPECT_EQ(tree_.stemHint(), QStringLiteral("20\u00a0cm through"));
    ASSERT_EQ(tree_.problem(), QString());
    ASSERT_TRUE(tree_.add());
    ASSERT_EQ(workspace_.garden().trees.size(), 1u);
    const auto& tree = *workspace_.tree();
    EXPECT_EQ(tree.name, "Apple");
    EXPECT_NEAR(stemDiameter_m(tree), 0.63 / M_PI, 1e-3);
    EXPECT_TRUE(model::validate(workspace_.garden()).empty());
    for (const auto& limb : tree.limbs)
        EXPECT_FALSE(limb.name.empty());
    EXPECT_EQ(workspace_.document().history().undoText(), QStringLiteral("add Apple"));
    workspace_.document().history().undo();
    EXPECT_TRUE(workspace_.garden().trees.empty());
}

TEST_F(StartTest, WhatWasMeasuredGoesBeforeWhatIsUsual)
{
    ASSERT_TRUE(fresh_.start());
    tree_.setTyped(QStringLiteral("Betula pendula"));
    EXPECT_EQ(tree_.species(), QStringLiteral("Betula pendula")); // only one fits
    tree_.setByGirth(false);
    tree_.setStem(QStringLiteral("30 cm"));
    EXPECT_FALSE(tree_.usualHeight().isEmpty());
    tree_.setHeight(QStringLiteral("11 m"));
    tree_.setSpread(QStringLiteral("7"));
    tree_.setLowestLimb(QStringLiteral("1.8"));
    tree_.setEast(QStringLiteral("3"));
    tree_.setNorth(QStringLiteral("-2"));
    ASSERT_EQ(tree_.problem(), QString());
    ASSERT_TRUE(tree_.add());
    EXPECT_NEAR(model::height_m(*workspace_.tree()), 11.0, 0.1);
    EXPECT_EQ(workspace_.tree()->position_m, (model::Point2{3.0, -2.0}));
}

TEST_F(StartTest, WhatIsMissingOfATreeIsSaidInOneSentence)
{
    EXPECT_FALSE(tree_.problem().isEmpty());
    tree_.setTyped(QStringLiteral("xyzzy"));
    EXPECT_TRUE(tree_.problem().contains(QStringLiteral("No species")));
    tree_.setTyped(QStringLiteral("Betula pendula"));
    tree_.setStem(QStringLiteral("60"));
    tree_.setHeight(QStringLiteral("tall"));
    EXPECT_TRUE(tree_.problem().startsWith(QStringLiteral("Height")));
    tree_.setHeight(QStringLiteral("60"));
    EXPECT_FALSE(tree_.problem().isEmpty()); // too slender
    EXPECT_FALSE(tree_.add());
    tree_.setHeight(QStringLiteral("5"));
    tree_.setLowestLimb(QStringLiteral("4.9"));
    EXPECT_TRUE(tree_.problem().startsWith(QStringLiteral("Lowest limb")));
}

TEST_F(StartTest, MeasuresThatDontGoTogetherAreRemarkedOn)
{
    tree_.setTyped(QStringLiteral("Betula pendula"));
    tree_.setStem(QStringLiteral("90"));
    EXPECT_EQ(tree_.remark(), QString());
    tree_.setSpread(QStringLiteral("24"));
    EXPECT_FALSE(tree_.remark().isEmpty());
}

TEST_F(StartTest, TheNextTreeStandsBesideTheFirst)
{
    ASSERT_TRUE(fresh_.start());
    for (int i = 0; i < 2; ++i) {
        tree_.reset();
        tree_.setTyped(QStringLiteral("Betula pendula"));
        tree_.setStem(QStringLiteral("60"));
        ASSERT_TRUE(tree_.add());
    }
    const auto& trees = workspace_.garden().trees;
    EXPECT_GT(trees[1].position_m.x, trees[0].position_m.x + 3.0);
    EXPECT_NE(trees[0].id, trees[1].id);
    EXPECT_EQ(workspace_.tree()->id, trees[1].id);
}

TEST_F(StartTest, TheHeightIsHelpedTo)
{
    EXPECT_EQ(
        tree_.heightByShadow(QStringLiteral("1 m"), QStringLiteral("1.5"), QStringLiteral("18 m")),
        QStringLiteral("12\u00a0m"));
    EXPECT_EQ(
        tree_.heightByAngle(QStringLiteral("45°"), QStringLiteral("10"), QStringLiteral("1.6")),
        QStringLiteral("11.6\u00a0m"));
    EXPECT_EQ(tree_.heightByShadow(QStringLiteral("1 m"), QString(), QStringLiteral("18 m")),
              QString());
}

} // namespace
} // namespace app
