#include "app/drawing/side_bearing.hpp"
#include "app/view/answers_view_model.hpp"
#include "app/view/clock.hpp"
#include "app/view/conditions_view_model.hpp"
#include "app/view/garden_view_model.hpp"
#include "app/view/light_view_model.hpp"
#include "app/view/plan_view_model.hpp"
#include "app/view/side_view_model.hpp"
#include "app/view/work_view_model.hpp"
#include "model/geometry/angle.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/wait_for.hpp"

#include <QAbstractItemModelTester>
#include <QCoreApplication>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace app {
namespace {

class ViewModelTest : public ::testing::Test {
protected:
    ViewModelTest() { restart(smallGarden()); }

    void restart(model::Garden garden)
    {
        workspace_.document().start(std::move(garden));
        side_.resize(900, 500);
        plan_.resize(420, 300);
    }
    void settle()
    {
        ASSERT_TRUE(waitFor([this] { return !workspace_.isBusy(); }));
    }
    QPointF handle(const char* limb, int station)
    {
        auto& handles = *side_.handles();
        for (int row = 0; row < handles.rowCount(); ++row) {
            const auto index = handles.index(row);
            if (handles.data(index, HandleModel::LimbId) == QLatin1String(limb) &&
                handles.data(index, HandleModel::Station) == station)
                return {handles.data(index, HandleModel::X).toDouble(),
                        handles.data(index, HandleModel::Y).toDouble()};
        }
        ADD_FAILURE() << "no handle " << limb << ' ' << station;
        return {};
    }
    const model::Limb& bough() const { return workspace_.tree()->limbs.at(1); }

    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    GardenViewModel garden_{workspace_, {}};
    SideViewModel side_{workspace_};
    PlanViewModel plan_{workspace_, side_};
    ConditionsViewModel conditions_{workspace_};
    AnswersViewModel answers_{workspace_};
    WorkViewModel work_{workspace_};
    LightViewModel light_{workspace_, plan_, modelLightWorks(tables())};
};

TEST_F(ViewModelTest, FirstLooksAlongTheStripBesideTheTree)
{
    EXPECT_EQ(side_.bearing(), 0.0); // the path runs north
    auto turned = smallGarden();
    turned.strips[0].outline_m = {{0, 3}, {12, 3}, {12, 4.5}, {0, 4.5}};
    EXPECT_EQ(tellingBearing_deg(turned, turned.trees[0]), 90.0);
    turned.strips.clear();
    turned.plantings.clear();
    EXPECT_EQ(tellingBearing_deg(turned, turned.trees[0]), 0.0);
}

TEST_F(ViewModelTest, ADragMovesTheStationUnderTheHandInOneStep)
{
    const QPointF from = handle("bough", 2);
    side_.grab(QStringLiteral("bough"), 2);
    for (int i = 1; i <= 10; ++i)
        side_.dragTo(from.x() + 2.0 * i, from.y() - 5.0 * i);
    const QPointF at = handle("bough", 2);
    EXPECT_NEAR(at.x(), from.x() + 20.0, 1e-6);
    EXPECT_NEAR(at.y(), from.y() - 50.0, 1e-6);
    side_.drop();
    EXPECT_EQ(workspace_.document().history().count(), 1);
    EXPECT_EQ(garden_.undoName(), QStringLiteral("move path bough"));
    garden_.undo();
    EXPECT_EQ(workspace_.garden(), smallGarden());
}

TEST_F(ViewModelTest, ADragIntoTheGroundStopsAtTheLastPlaceThatCanBe)
{
    const QPointF from = handle("bough", 2);
    side_.grab(QStringLiteral("bough"), 2);
    side_.dragTo(from.x(), from.y() + 30.0);
    const double last = bough().stations[2].position_m.z;
    side_.dragTo(from.x(), from.y() + 900.0);
    EXPECT_EQ(bough().stations[2].position_m.z, last);
    EXPECT_FALSE(garden_.problem().isEmpty());
    side_.dragTo(from.x(), from.y() + 20.0);
    EXPECT_TRUE(garden_.problem().isEmpty());
    side_.drop();
}

TEST_F(ViewModelTest, FromTheSideALimbIsDraggedInTheSecondDirection)
{
    side_.setBearing(90.0);
    const QPointF from = handle("bough", 2);
    side_.grab(QStringLiteral("bough"), 2);
    side_.dragTo(from.x() + 40.0, from.y());
    side_.drop();
    EXPECT_NEAR(bough().stations[2].position_m.x, 2.5, 1e-9); // depth is kept
    EXPECT_LT(bough().stations[2].position_m.y, 0.0);         // south is to the right
}

TEST_F(ViewModelTest, HandlesKeepTheirRowsWhileTheirLimbIsMoved)
{
    auto& handles = *side_.handles();
    QAbstractItemModelTester tester(&handles,
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    QSignalSpy reset(&handles, &QAbstractItemModel::modelReset);
    side_.nudge(QStringLiteral("bough"), 2, 1, 1);
    EXPECT_EQ(reset.count(), 0);
    side_.growLimb(QStringLiteral("bough"), 1);
    EXPECT_EQ(reset.count(), 1);
    EXPECT_EQ(workspace_.limbId(), "limb-1");
}

TEST_F(ViewModelTest, ARunOfKeysOnOneHandleIsOneStep)
{
    for (int i = 0; i < 5; ++i)
        side_.nudge(QStringLiteral("bough"), 2, 0, 1);
    EXPECT_NEAR(bough().stations[2].position_m.z, 2.8 + 0.25, 1e-9);
    EXPECT_EQ(workspace_.document().history().count(), 1);
    side_.nudge(QStringLiteral("stem"), 2, 1, 0);
    EXPECT_EQ(workspace_.document().history().count(), 2);
}

TEST_F(ViewModelTest, UsGardenersMoveInInches)
{
    Workspace us(tables(), Units(QLocale(QLocale::English), Measures::unitedStates),
                 modelWorks(tables()), std::chrono::year(2025) / 7 / 3);
    SideViewModel side(us);
    us.document().start(smallGarden());
    side.resize(900, 500);
    side.nudge(QStringLiteral("bough"), 2, 0, 1);
    EXPECT_NEAR(us.tree()->limbs[1].stations[2].position_m.z, 2.8 + 2 * 0.0254, 1e-9);
}

TEST_F(ViewModelTest, AStrokeGrowsALimbInTheViewsPlane)
{
    const QPointF from = handle("stem", 1);
    side_.beginStroke(from.x(), from.y() - 30.0);
    for (int i = 1; i <= 30; ++i)
        side_.extendStroke(from.x() - 4.0 * i, from.y() - 30.0 - 2.0 * i);
    ASSERT_TRUE(side_.endStroke());
    ASSERT_EQ(workspace_.tree()->limbs.size(), 3U);
    const auto& grown = workspace_.tree()->limbs.back();
    EXPECT_EQ(grown.parent, "stem");
    for (const auto& station : grown.stations)
        EXPECT_NEAR(station.position_m.y, 0.0, 1e-9);
    EXPECT_EQ(workspace_.limbId(), grown.id);
}

TEST_F(ViewModelTest, ErasingChoosesTheParentAndTheTrunkStays)
{
    side_.chooseLimb(QStringLiteral("bough"));
    side_.deleteLimb();
    EXPECT_EQ(workspace_.limbId(), "stem");
    EXPECT_FALSE(side_.canDelete());
    side_.deleteLimb();
    EXPECT_EQ(workspace_.tree()->limbs.size(), 1U);
}

TEST_F(ViewModelTest, TheAnswersAreThoseOfTheModel)
{
    settle();
    const auto assessment =
        model::assess(workspace_.garden(), tables(), {workspace_.date(), 25.0}, "maple");
    ASSERT_EQ(answers_.room()->rowCount(), 1);
    EXPECT_EQ(answers_.room()->facts()[0].subject, QStringLiteral("garden path"));
    const auto& units = workspace_.units();
    EXPECT_TRUE(answers_.room()->facts()[0].figure.startsWith(
        units.length(*assessment.trees[0].headroom[0].height_m)));
    EXPECT_EQ(answers_.sun()->facts()[0].figure, units.hours(assessment.sun[0].sun_h));
    double most = 0.0;
    for (const auto& load : assessment.trees[0].load.limbs)
        most = std::max(most, load.utilisation);
    EXPECT_EQ(answers_.storm()->facts()[0].figure, units.share(most));
    EXPECT_EQ(work_.cuts()->rowCount(),
              static_cast<int>(assessment.trees[0].suggestion.cuts.size()));
    EXPECT_DOUBLE_EQ(work_.leafShare(), assessment.trees[0].suggestion.leafShare);
    EXPECT_TRUE(answers_.isCurrent());
}

TEST_F(ViewModelTest, AnswersToAnOlderGardenAreMarkedSo)
{
    settle();
    side_.nudge(QStringLiteral("bough"), 2, 0, -1);
    EXPECT_FALSE(work_.isCurrent());
    settle();
    EXPECT_TRUE(work_.isCurrent());
}

TEST_F(ViewModelTest, AfterTheCutsTheDrawingIsThatOfTheCutTree)
{
    settle();
    ASSERT_TRUE(side_.hasAfter());
    const auto before = side_.scene();
    side_.setShowsAfter(true);
    const auto after = side_.scene();
    EXPECT_TRUE(before.gone.empty());
    EXPECT_EQ(after.gone.size(), before.limbs.size());
    ASSERT_FALSE(after.needs.empty() && before.needs.empty());
    EXPECT_FALSE(before.needs[0].enough);
    EXPECT_TRUE(after.needs.empty() || after.needs[0].enough);
    EXPECT_EQ(side_.handles()->rowCount(), 0); // nothing to drag on a tree that isn't there yet
}

TEST_F(ViewModelTest, NoAnswerSaysThatATreeIsSafe)
{
    settle();
    QStringList all{answers_.roomHeadline(), answers_.stormHeadline(), answers_.sunHeadline(),
                    work_.outcome(), work_.who()};
    for (const auto* facts : {answers_.room(), answers_.storm(), answers_.sun()})
        for (const auto& fact : facts->facts())
            all << fact.sentence;
    for (const auto& sentence : all)
        EXPECT_FALSE(sentence.contains(QStringLiteral("safe"), Qt::CaseInsensitive))
            << sentence.toStdString();
    EXPECT_GE(work_.cautions().size(), 5);
}

TEST_F(ViewModelTest, TheTitleCarriesTheNameAndTheMark)
{
    EXPECT_EQ(garden_.title(), QStringLiteral("Test garden - Underbough"));
    side_.nudge(QStringLiteral("bough"), 2, 0, 1);
    EXPECT_EQ(garden_.title(), QStringLiteral("Test garden * - Underbough"));
}

TEST_F(ViewModelTest, WhoWalksRoundOnThePlanLooksTowardsTheTree)
{
    const auto& frame = plan_.frame();
    const QPointF east = frame.toCanvas({14, 6});
    plan_.walkTo(east.x(), east.y());
    EXPECT_EQ(side_.bearing(), 270.0);
    EXPECT_GT(plan_.eye().x(), frame.toCanvas({4, 6}).x());
}

TEST_F(ViewModelTest, DaysAndHoursAreThoseOfTheCalendar)
{
    EXPECT_EQ(conditions_.dayOfYear(), 184); // 3 July of a common year: 31+28+31+30+31+30+3
    conditions_.setDayOfYear(60);
    EXPECT_EQ(workspace_.date(), std::chrono::year(2025) / 3 / 1);
    EXPECT_EQ(conditions_.daysInYear(), 365);
}

TEST_F(ViewModelTest, AGardenWithoutTreesIsShownAndSaysSo)
{
    auto bare = smallGarden();
    bare.trees.clear();
    restart(bare);
    EXPECT_TRUE(side_.scene().limbs.empty());
    EXPECT_EQ(garden_.treeIndex(), -1);
    EXPECT_FALSE(plan_.hasEye());
    side_.beginStroke(10, 10);
    EXPECT_FALSE(side_.endStroke());
    side_.nudge(QStringLiteral("bough"), 1, 1, 1);
    EXPECT_FALSE(work_.isKnown());
}

using namespace std::chrono_literals;

// Zurich keeps UTC+1 in winter and UTC+2 in summer (IANA time zone data).
TEST(InstantAt, KeepsTheClockOfThePlace)
{
    const model::Place zurich{47.4, 8.5, 430.0, "Europe/Zurich"};
    const auto winter = std::chrono::year(2025) / 1 / 15;
    const auto summer = std::chrono::year(2025) / 7 / 15;
    EXPECT_EQ(instantAt(zurich, winter, 12.0), std::chrono::sys_days(winter) + 11h);
    EXPECT_EQ(instantAt(zurich, summer, 12.0), std::chrono::sys_days(summer) + 10h);
}

// Closed form: the mean sun is an hour early for every 15 degrees east.
TEST(InstantAt, KeepsSunTimeWhereNoZoneIsNamed)
{
    const auto day = std::chrono::year(2025) / 7 / 15;
    EXPECT_EQ(instantAt({47.4, 15.0, 0.0, ""}, day, 12.0), std::chrono::sys_days(day) + 11h);
    EXPECT_EQ(instantAt({47.4, -30.0, 0.0, "No/Where"}, day, 6.5),
              std::chrono::sys_days(day) + 8h + 30min);
}

TEST_F(ViewModelTest, TheYearOfLightIsToldByPlantingAndMonth)
{
    ASSERT_TRUE(waitFor([this] { return !light_.isBusy(); }));
    ASSERT_EQ(light_.places().size(), 1);
    EXPECT_EQ(light_.place(), 0);
    ASSERT_EQ(light_.months()->rowCount(), 12);
    for (const auto& month : light_.months()->months()) {
        EXPECT_LE(month.here, month.open + 1e-9);
        EXPECT_LE(month.open, 1.0);
    }
    EXPECT_TRUE(light_.months()->months()[5].growing);
    EXPECT_FALSE(light_.months()->months()[0].growing);
    EXPECT_EQ(light_.months()->months()[0].tone, Tone::Plain);
    EXPECT_GT(light_.need(), 0.0);
    EXPECT_LE(light_.need(), light_.good());
    ASSERT_GE(light_.taken()->rowCount(), 1);
    EXPECT_EQ(light_.taken()->facts().front().subject, QStringLiteral("the maple"));
    ASSERT_GE(light_.cuts()->rowCount(), 1);
    light_.choose(light_.cuts()->facts().front().id);
    EXPECT_NE(workspace_.limb(), nullptr);
}

TEST_F(ViewModelTest, TheSunMapIsDrawnWhileItIsWanted)
{
    EXPECT_FALSE(plan_.scene().map);
    light_.setMapShown(true);
    ASSERT_TRUE(waitFor([this] { return plan_.scene().map.has_value(); }));
    light_.setMapShown(false);
    EXPECT_FALSE(plan_.scene().map);
}

TEST_F(ViewModelTest, AChosenLimbTellsTheGustThatBreaksItAndTheWorstWind)
{
    settle();
    const auto before = plan_.scene(); // for the limb that is asked most
    ASSERT_TRUE(before.wind);
    EXPECT_TRUE(before.windText.startsWith(QStringLiteral("worst wind for ")));
    side_.chooseLimb(QStringLiteral("bough"));
    const auto text = side_.limbLoad().toStdString();
    EXPECT_NE(text.find("of its expected strength"), std::string::npos) << text;
    EXPECT_NE(text.find("Likely to break"), std::string::npos) << text;
    EXPECT_NE(text.find("one in ten such limbs"), std::string::npos) << text;
    const auto scene = plan_.scene();
    ASSERT_TRUE(scene.wind);
    const auto* load = workspace_.load("bough");
    ASSERT_NE(load, nullptr);
    const auto lee = model::bearingDirection(load->governingBearing_deg);
    const QPointF blows = scene.wind->p2() - scene.wind->p1(); // y of the canvas is down
    EXPECT_NEAR(blows.x() / scene.wind->length(), -lee.x, 1e-9);
    EXPECT_NEAR(blows.y() / scene.wind->length(), lee.y, 1e-9);
}

} // namespace
} // namespace app
