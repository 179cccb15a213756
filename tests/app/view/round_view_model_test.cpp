#include "app/view/round_view_model.hpp"

#include "app/tables/tables.hpp"
#include "model/light/sun.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/wait_for.hpp"

#include <QAbstractItemModelTester>
#include <QCoreApplication>
#include <QQuaternion>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace app {
namespace {

const model::Tables& shipped()
{
    static const model::Tables kTables = loadTables();
    return kTables;
}

class RoundViewModelTest : public ::testing::Test {
protected:
    RoundViewModelTest()
    {
        workspace_.document().start(smallGarden());
        round_.setColours(&colours_);
        round_.resize(900, 500);
        round_.setShowsFalling(false); // else the bough falls as soon as cuts are suggested
        round_.setShown(true);
        pump();
    }
    static void pump() { QCoreApplication::processEvents(); }
    void settle()
    {
        EXPECT_TRUE(waitFor([this] { return !workspace_.isBusy(); }));
        pump();
    }
    [[nodiscard]] QPointF drawn(const char* limb, double at_m) const
    {
        const auto& tree = *workspace_.tree();
        const auto& wood = tree.limbs[model::limbIndex(tree, limb)];
        return round_.camera()
            .toCanvas(foot_m(workspace_.garden(), tree.position_m) +
                      model::axisPoint(wood, at_m).position_m)
            .value();
    }
    [[nodiscard]] int row(RoundKind kind, const std::string& id)
    {
        const auto& parts = round_.parts()->parts();
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (parts[i].kind == kind && parts[i].id == id)
                return static_cast<int>(i);
        return -1;
    }
    [[nodiscard]] QColor colour(RoundKind kind, const std::string& id)
    {
        return round_.parts()
            ->data(round_.parts()->index(row(kind, id)), RoundPartModel::Colour)
            .value<QColor>();
    }
    /// Takes the bough off, as a trial.
    void tryRemoval()
    {
        auto trial = std::make_shared<model::Trial>();
        trial->standing = *workspace_.tree();
        trial->standing.limbs.pop_back();
        workspace_.setTrial(trial);
        pump();
    }

    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    DrawingColours colours_;
    Workspace workspace_{shipped(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(shipped()), std::chrono::year(2025) / 7 / 3};
    SideViewModel side_{workspace_};
    RoundViewModel round_{workspace_, side_};
};

TEST_F(RoundViewModelTest, IsASoundListOfParts)
{
    const QAbstractItemModelTester tester(round_.parts(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_GE(row(RoundKind::wood, "stem"), 0);
    EXPECT_GE(row(RoundKind::wood, "bough"), 0);
    EXPECT_GE(row(RoundKind::strip, "path"), 0);
    round_.setShowsFalling(true);
    tryRemoval();
    EXPECT_GE(row(RoundKind::fallenWood, "bough"), 0);
}

TEST_F(RoundViewModelTest, NothingIsReckonedWhileNobodyLooks)
{
    round_.setShown(false);
    QSignalSpy changed(round_.parts(), &QAbstractItemModel::modelReset);
    auto garden = smallGarden();
    garden.trees[0].limbs.pop_back();
    workspace_.document().start(garden);
    pump();
    EXPECT_EQ(changed.count(), 0);
    round_.setShown(true);
    pump();
    EXPECT_EQ(changed.count(), 1);
}

TEST_F(RoundViewModelTest, ALimbPressedHereIsChosenEverywhereAndBack)
{
    colours_.chosen = Qt::blue;
    const QPointF at = drawn("bough", 1.3);
    round_.chooseAt(at.x(), at.y());
    EXPECT_EQ(side_.chosenLimb(), QStringLiteral("bough"));
    pump();
    EXPECT_EQ(colour(RoundKind::wood, "bough"), QColor(Qt::blue));
    side_.chooseLimb(QStringLiteral("stem"));
    pump();
    EXPECT_EQ(colour(RoundKind::wood, "stem"), QColor(Qt::blue));
    EXPECT_NE(colour(RoundKind::wood, "bough"), QColor(Qt::blue));
    round_.chooseAt(2.0, 2.0);
    EXPECT_EQ(side_.chosenLimb(), QString());
}

TEST_F(RoundViewModelTest, KeysChooseLimbAfterLimb)
{
    round_.chooseNext(1);
    EXPECT_EQ(side_.chosenLimb(), QStringLiteral("stem"));
    round_.chooseNext(1);
    EXPECT_EQ(side_.chosenLimb(), QStringLiteral("bough"));
    round_.chooseNext(1);
    EXPECT_EQ(side_.chosenLimb(), QStringLiteral("stem"));
    round_.chooseNext(-1);
    EXPECT_EQ(side_.chosenLimb(), QStringLiteral("bough"));
}

TEST_F(RoundViewModelTest, APressWithTheSawSaysWhere)
{
    QSignalSpy sawn(&round_, &RoundViewModel::sawn);
    side_.setSawing(true);
    const QPointF at = drawn("bough", 1.3);
    round_.chooseAt(at.x(), at.y());
    ASSERT_EQ(sawn.count(), 1);
    EXPECT_EQ(sawn[0][0].toString(), QStringLiteral("bough"));
    EXPECT_NEAR(sawn[0][1].toDouble(), 1.3, 0.05);
}

TEST_F(RoundViewModelTest, APressOnAnotherTreeChoosesIt)
{
    auto garden = smallGarden();
    auto other = garden.trees[0];
    other.id = "second";
    other.position_m = {9, 12};
    garden.trees.push_back(other);
    workspace_.document().start(garden);
    pump();
    round_.zoom(0.4);
    const auto at = round_.camera().toCanvas({9, 12, 1.0}).value();
    round_.chooseAt(at.x(), at.y());
    EXPECT_EQ(workspace_.tree()->id, "second");
}

TEST_F(RoundViewModelTest, WalkingRoundTakesTheSideViewAlong)
{
    const double before = side_.bearing();
    round_.walk(1, 0);
    EXPECT_NEAR(side_.bearing(), std::fmod(before + 355.0, 360.0), 1e-9);
    side_.setBearing(120.0);
    EXPECT_NEAR(round_.camera().bearing_deg, 120.0, 1e-9);
    QSignalSpy moved(&round_, &RoundViewModel::cameraChanged);
    round_.drag(40.0, 20.0);
    EXPECT_GE(moved.count(), 1);
    EXPECT_NE(side_.bearing(), 120.0);
}

TEST_F(RoundViewModelTest, NobodyLooksFromUnderTheGroundOrFromUpsideDown)
{
    for (int i = 0; i < 60; ++i)
        round_.walk(0, -1);
    EXPECT_GE(round_.camera().eye_m().z, 0.29);
    for (int i = 0; i < 60; ++i)
        round_.walk(0, 1);
    EXPECT_LT(round_.camera().down_deg, 90.0);
    round_.walk(0, -60);
    round_.zoom(0.3); // farther off on a slanting look
    EXPECT_GE(round_.camera().eye_m().z, 0.29);
}

TEST_F(RoundViewModelTest, GoesNearerAndBackToTheWholeTree)
{
    const double whole = round_.camera().distance_m;
    EXPECT_TRUE(round_.isFitted());
    round_.zoom(2.0);
    EXPECT_NEAR(round_.camera().distance_m, whole / 2.0, 1e-9);
    EXPECT_FALSE(round_.isFitted());
    round_.fit();
    EXPECT_NEAR(round_.camera().distance_m, whole, 1e-9);
}

// Law: the light shines from where the sun stands. Qt turns about x after y, as its cameras and
// lights do that look along -z by themselves.
TEST_F(RoundViewModelTest, TheLightShinesFromTheSun)
{
    for (const double hour : {8.0, 12.5, 18.0}) {
        workspace_.setHour(hour);
        const auto towards = model::light::towardsSun(round_.sun());
        const auto beam = QQuaternion::fromEulerAngles(round_.sunbeam()) * QVector3D(0, 0, -1);
        EXPECT_NEAR(beam.x(), -towards.x, 1e-5);
        EXPECT_NEAR(beam.y(), -towards.z, 1e-5);
        EXPECT_NEAR(beam.z(), towards.y, 1e-5);
        EXPECT_GT(round_.sunlight(), 0.9);
    }
    workspace_.setHour(1.0);
    EXPECT_EQ(round_.sunlight(), 0.0);
}

TEST_F(RoundViewModelTest, TheCameraLooksAsTheSceneIsDrawn)
{
    side_.setBearing(70.0);
    const auto look = round_.camera().look();
    const auto turned = QQuaternion::fromEulerAngles(round_.look()) * QVector3D(0, 0, -1);
    EXPECT_NEAR(turned.x(), look.x, 1e-5);
    EXPECT_NEAR(turned.y(), look.z, 1e-5);
    EXPECT_NEAR(turned.z(), -look.y, 1e-5);
    EXPECT_NEAR(round_.eye().y(), round_.camera().eye_m().z, 1e-4);
}

TEST_F(RoundViewModelTest, TheQuartersStandWhereTheyAre)
{
    side_.setBearing(0.0); // looking north
    const auto places = round_.quarterPlaces();
    ASSERT_EQ(places.size(), 4);
    EXPECT_GT(places[1].x(), places[3].x()); // east to the right of west
    EXPECT_LT(places[0].y(), places[2].y()); // north beyond south
}

TEST_F(RoundViewModelTest, BeforeAndAfterAreThoseOfTheWindow)
{
    settle();
    round_.setShowsFalling(true);
    tryRemoval();
    EXPECT_TRUE(round_.hasFalling());
    EXPECT_EQ(row(RoundKind::wood, "bough"), -1); // all of it falls
    EXPECT_GE(row(RoundKind::fallenWood, "bough"), 0);
    EXPECT_EQ(colour(RoundKind::fallenWood, "bough").alphaF(), 1.0F);
    side_.setShowsAfter(true);
    pump();
    EXPECT_LT(colour(RoundKind::fallenWood, "bough").alphaF(), 1.0F);
    EXPECT_EQ(row(RoundKind::leaf, "bough"), -1);
    round_.setShowsFalling(false);
    pump();
    EXPECT_EQ(row(RoundKind::fallenWood, "bough"), -1);
    side_.setShowsAfter(false);
    pump();
    EXPECT_GE(row(RoundKind::wood, "bough"), 0);
}

TEST_F(RoundViewModelTest, WordsTellWhatIsSeen)
{
    side_.setBearing(90.0);
    EXPECT_TRUE(round_.summary().contains(QStringLiteral("the maple")));
    EXPECT_TRUE(round_.summary().contains(QStringLiteral("east")));
    EXPECT_TRUE(round_.summary().contains(QStringLiteral("2 limbs")));
}

} // namespace
} // namespace app
