#include "app/format/day_of_year.hpp"
#include "app/view/answers_view_model.hpp"
#include "app/view/day_view_model.hpp"
#include "app/view/grounds_view_model.hpp"
#include "app/view/tree_view_model.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/wait_for.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

class GroundsTest : public ::testing::Test {
protected:
    GroundsTest() { workspace_.document().start(smallGarden()); }

    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    AnswersViewModel answers_{workspace_};
    GroundsViewModel grounds_{workspace_};
    TreeViewModel tree_{workspace_};
};

TEST_F(GroundsTest, TheFallIsTypedAsAShareOrAsOneInSoMany)
{
    grounds_.setFall(QStringLiteral("8 %"));
    EXPECT_NEAR(workspace_.garden().slope->gradient, 0.08, 1e-12);
    grounds_.setFallsTo(2);
    EXPECT_EQ(workspace_.garden().slope->fallsTo_deg, 90.0);
    grounds_.setFall(QStringLiteral("1 in 12"));
    EXPECT_NEAR(workspace_.garden().slope->gradient, 1.0 / 12.0, 1e-12);
    EXPECT_EQ(workspace_.garden().slope->fallsTo_deg, 90.0);
    grounds_.setFall(QStringLiteral("steep"));
    EXPECT_FALSE(workspace_.problem().isEmpty());
    EXPECT_NEAR(workspace_.garden().slope->gradient, 1.0 / 12.0, 1e-12);
    grounds_.setFall(QString());
    EXPECT_FALSE(workspace_.garden().slope);
    EXPECT_EQ(grounds_.fallsTo(), -1);
}

TEST_F(GroundsTest, SunshineCountsOnceAllTwelveMonthsAreThere)
{
    for (int month = 0; month < 11; ++month)
        grounds_.setSunshine(month, QStringLiteral("%1 %").arg(30 + month));
    EXPECT_TRUE(workspace_.garden().place.sunshineShare.empty());
    EXPECT_TRUE(grounds_.sunshineText().contains(QStringLiteral("11")));
    grounds_.setSunshine(11, QStringLiteral("41"));
    ASSERT_EQ(workspace_.garden().place.sunshineShare.size(), 12u);
    EXPECT_NEAR(workspace_.garden().place.sunshineShare[3], 0.33, 1e-12);
    grounds_.setSunshine(3, QStringLiteral("120 %"));
    EXPECT_FALSE(workspace_.problem().isEmpty());
    grounds_.setSunshine(3, QString());
    EXPECT_TRUE(workspace_.garden().place.sunshineShare.empty());
    EXPECT_EQ(grounds_.sunshine()[4], workspace_.units().share(0.34)); // the others are kept
    workspace_.document().history().undo();
    EXPECT_EQ(workspace_.garden().place.sunshineShare.size(), 12u);
    EXPECT_EQ(grounds_.sunshine()[3], workspace_.units().share(0.33));
}

TEST_F(GroundsTest, OtherMeasuresReadEverythingAnew)
{
    ASSERT_TRUE(waitFor([this] { return !workspace_.isBusy(); }));
    const QString metric = answers_.room()->facts().front().figure;
    grounds_.setMeasure(static_cast<int>(Measures::unitedStates));
    EXPECT_NE(answers_.room()->facts().front().figure, metric);
    EXPECT_TRUE(answers_.room()->facts().front().figure.contains(QStringLiteral("ft")));
    EXPECT_TRUE(answers_.stormNote().contains(QStringLiteral("lb")));
    EXPECT_FALSE(workspace_.document().isDirty()); // they are the reader's, not the garden's
    grounds_.setMeasure(static_cast<int>(Measures::metric));
    EXPECT_EQ(answers_.room()->facts().front().figure, metric);
}

TEST_F(GroundsTest, ABareFigureForTheDaysWindIsReadAnew)
{
    DayViewModel day(workspace_);
    day.setGust(QStringLiteral("30"));
    EXPECT_NEAR(*day.weather().gust_m_s, 30.0 / 3.6, 1e-9);
    grounds_.setMeasure(static_cast<int>(Measures::unitedStates));
    EXPECT_NEAR(*day.weather().gust_m_s, 30.0 * 0.44704, 1e-9); // mile 1609.344 m exactly
    EXPECT_TRUE(day.gustExample().contains(QStringLiteral("mph")));
}

TEST_F(GroundsTest, PlaceAndWindAreTyped)
{
    grounds_.setLatitude(QStringLiteral("33.9 S"));
    EXPECT_NEAR(workspace_.garden().place.latitude_deg, -33.9, 1e-9);
    grounds_.setLatitude(QStringLiteral("133"));
    EXPECT_NEAR(workspace_.garden().place.latitude_deg, -33.9, 1e-9);
    EXPECT_FALSE(workspace_.problem().isEmpty());
    grounds_.setGust(QStringLiteral("108 km/h"));
    EXPECT_NEAR(workspace_.garden().designGust_m_s, 30.0, 1e-9);
    grounds_.setExposure(static_cast<int>(model::Exposure::open));
    EXPECT_EQ(workspace_.garden().exposure, model::Exposure::open);
}

TEST_F(GroundsTest, LeafDatesAreTypedAsDaysWithoutAYear)
{
    EXPECT_TRUE(tree_.dropsLeaf());
    tree_.setLeafOn(QStringLiteral("18 April"));
    ASSERT_TRUE(workspace_.tree()->leafDates.on);
    EXPECT_EQ(*workspace_.tree()->leafDates.on, std::chrono::April / 18);
    EXPECT_EQ(parseDayOfYear(tree_.leafOn(), workspace_.units().locale()), std::chrono::April / 18);
    tree_.setLeafOff(QStringLiteral("11-05"));
    EXPECT_EQ(*workspace_.tree()->leafDates.off, std::chrono::November / 5);
    tree_.setLeafOff(QStringLiteral("late"));
    EXPECT_FALSE(workspace_.problem().isEmpty());
    EXPECT_EQ(*workspace_.tree()->leafDates.off, std::chrono::November / 5);
    tree_.setLeafOn(QString());
    EXPECT_FALSE(workspace_.tree()->leafDates.on);
}

// Closed form: what is shown can be typed back, in every language that is likely.
TEST(DayOfYear, ReadsWhatItWrites)
{
    for (const auto language : {QLocale::English, QLocale::German, QLocale::Spanish})
        for (unsigned month = 1; month <= 12; ++month) {
            const auto day = std::chrono::month(month) / 17;
            EXPECT_EQ(parseDayOfYear(dayText(day, QLocale(language)), QLocale(language)), day)
                << month;
        }
    EXPECT_EQ(dayText(std::chrono::May / 2, QLocale(QLocale::German)), QStringLiteral("2. Mai"));
    EXPECT_EQ(parseDayOfYear(QStringLiteral("29 February"), QLocale(QLocale::English)),
              std::chrono::February / 29);
    EXPECT_FALSE(parseDayOfYear(QStringLiteral("31 April"), QLocale(QLocale::English)));
}

} // namespace
} // namespace app
