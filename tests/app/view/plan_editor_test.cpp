#include "app/view/plan_editor_view_model.hpp"
#include "app/view/thing_view_model.hpp"
#include "model/document/validate.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"

#include <QAbstractItemModelTester>
#include <QCoreApplication>
#include <QSignalSpy>

#include <gtest/gtest.h>

#include <cmath>

namespace app {
namespace {

class PlanEditorTest : public ::testing::Test {
protected:
    PlanEditorTest()
    {
        workspace_.document().start(smallGarden());
        plan_.resize(600, 500);
        editor_.setEditing(true);
    }
    QPointF at(double east_m, double north_m) const
    {
        return plan_.frame().toCanvas({east_m, north_m});
    }
    void click(double east_m, double north_m)
    {
        const QPointF point = at(east_m, north_m);
        editor_.addCorner(point.x(), point.y());
    }
    void choose(double east_m, double north_m)
    {
        const QPointF point = at(east_m, north_m);
        editor_.chooseAt(point.x(), point.y());
    }
    const model::Garden& garden() const { return workspace_.garden(); }
    int steps() { return workspace_.document().history().count(); }

    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    SideViewModel side_{workspace_};
    PlanViewModel plan_{workspace_, side_};
    PlanEditorViewModel editor_{workspace_, plan_};
    ThingViewModel thing_{workspace_, editor_};
};

TEST_F(PlanEditorTest, AHedgeIsDrawnCornerByCorner)
{
    QSignalSpy drawn(&editor_, &PlanEditorViewModel::drawn);
    editor_.setTool(static_cast<int>(PlanTool::hedge));
    click(1, 2);
    EXPECT_FALSE(editor_.canFinish());
    click(5, 2);
    click(5, 2.8);
    click(1, 2.8);
    EXPECT_TRUE(editor_.canFinish());
    click(1, 2); // the first corner again
    ASSERT_EQ(garden().plantings.size(), 2u);
    const auto& hedge = garden().plantings.back();
    EXPECT_EQ(hedge.kind, model::PlantingKind::hedge);
    EXPECT_NEAR(model::area_m2(hedge.outline_m), 4 * 0.8, 1e-9);
    EXPECT_GT(hedge.height_m, 0.5);
    EXPECT_NE(model::findPlant(tables(), hedge.plant), nullptr);
    EXPECT_EQ(drawn.count(), 1);
    EXPECT_EQ(editor_.tool(), -1);
    EXPECT_EQ(editor_.chosenId(), hedge.id);
    EXPECT_EQ(steps(), 1);
    workspace_.document().history().undo();
    EXPECT_EQ(garden(), smallGarden());
    EXPECT_FALSE(editor_.chosen());
}

TEST_F(PlanEditorTest, EveryToolPutsAUsualShapeInTheMiddleByKeyboard)
{
    for (int tool = 0; tool < kPlanTools; ++tool) {
        editor_.setTool(tool);
        editor_.finish();
        EXPECT_EQ(steps(), tool + 1) << workspace_.problem().toStdString();
        EXPECT_TRUE(editor_.chosen());
    }
    EXPECT_TRUE(model::validate(garden()).empty());
    EXPECT_TRUE(model::unknownNames(garden(), tables()).empty());
    EXPECT_EQ(garden().lines.size(), 1u);
    EXPECT_EQ(garden().structures.size(), 1u);
    EXPECT_EQ(garden().strips.size(), 2u);
    EXPECT_EQ(garden().plantings.size(), 5u);
    EXPECT_EQ(garden().neighbours.size(), 1u);
}

TEST_F(PlanEditorTest, ATreeNextDoorIsDrawnAsTheBoxAroundItsCrown)
{
    editor_.setTool(static_cast<int>(PlanTool::neighbour));
    const QPointF from = at(8, 2);
    const QPointF to = at(11, 8);
    editor_.dropBox(from.x(), from.y(), to.x(), to.y());
    ASSERT_EQ(garden().neighbours.size(), 1u) << workspace_.problem().toStdString();
    const auto& tree = garden().neighbours[0];
    EXPECT_NEAR(tree.position_m.x, 9.5, 1e-6);
    EXPECT_NEAR(tree.position_m.y, 5.0, 1e-6);
    EXPECT_NEAR(tree.spread_m, 6.0, 1e-6);
    ASSERT_TRUE(tree.across_m);
    EXPECT_NEAR(*tree.across_m, 3.0, 1e-6);
    EXPECT_NEAR(std::fmod(tree.bearing_deg, 180.0), 0.0, 1e-6); // its long way lies north
    EXPECT_TRUE(model::validate(garden()).empty());
    EXPECT_TRUE(model::unknownNames(garden(), tables()).empty());
    EXPECT_TRUE(thing_.isNeighbour());
    EXPECT_TRUE(editor_.things().contains(QStringLiteral("tree next door")));
}

TEST_F(PlanEditorTest, ATreeNextDoorIsDraggedWholeOrByACornerAndTakenAway)
{
    editor_.setTool(static_cast<int>(PlanTool::neighbour));
    editor_.finish();
    const auto before = garden().neighbours.at(0);
    EXPECT_FALSE(before.across_m); // round
    const auto id = QString::fromStdString(before.id);
    editor_.nudge(id, -1, 2, 0, true);
    EXPECT_NEAR(garden().neighbours[0].position_m.x, before.position_m.x + 1.0, 1e-9);
    EXPECT_NEAR(garden().neighbours[0].spread_m, before.spread_m, 1e-9);
    const auto corners = cornersOf(garden(), *editor_.chosen());
    const QPointF hand = plan_.frame().toCanvas(corners[2]);
    const QPointF to = plan_.frame().toCanvas(corners[2] + 0.5 * (corners[2] - corners[1]));
    editor_.grab(id, 2, hand.x(), hand.y());
    editor_.dragTo(to.x(), to.y());
    editor_.drop();
    const auto& wider = garden().neighbours[0];
    const auto after = cornersOf(garden(), *editor_.chosen());
    EXPECT_NEAR(norm(after[0] - corners[0]), 0.0, 1e-6); // the opposite corner stays
    EXPECT_NEAR(wider.spread_m, before.spread_m, 1e-6);
    ASSERT_TRUE(wider.across_m);
    EXPECT_NEAR(*wider.across_m, 1.5 * before.spread_m, 1e-6);
    editor_.removeChosen();
    EXPECT_TRUE(garden().neighbours.empty());
}

TEST_F(PlanEditorTest, ATreeNextDoorHasItsFactsTyped)
{
    editor_.setTool(static_cast<int>(PlanTool::neighbour));
    editor_.finish();
    const auto tree = [this]() -> const model::Neighbour& { return garden().neighbours.at(0); };
    thing_.setName(QStringLiteral("spruce over the fence"));
    thing_.setHeight(QStringLiteral("12 m"));
    thing_.setCrownBase(QStringLiteral("2 m"));
    thing_.setLength(QStringLiteral("7 m"));
    thing_.setStem(QStringLiteral("40 cm"));
    thing_.setSort(2);
    thing_.setEast(QStringLiteral("14 m"));
    thing_.setPlantTyped(QStringLiteral("Picea abies"));
    ASSERT_FALSE(thing_.plants().isEmpty());
    thing_.takePlant(0);
    EXPECT_EQ(tree().name, "spruce over the fence");
    EXPECT_EQ(tree().height_m, 12.0);
    EXPECT_EQ(tree().crownBase_m, 2.0);
    EXPECT_NEAR(std::max(tree().spread_m, tree().across_m.value_or(0.0)), 7.0, 1e-9);
    ASSERT_TRUE(tree().stemDiameter_m);
    EXPECT_NEAR(*tree().stemDiameter_m, 0.4, 1e-9);
    EXPECT_EQ(tree().density, model::FoliageDensity::dense);
    EXPECT_NEAR(tree().position_m.x, 14.0, 1e-9);
    EXPECT_EQ(tree().species, "Picea abies");
    thing_.setStem(QString());
    EXPECT_FALSE(tree().stemDiameter_m);
    thing_.setLength(QStringLiteral("9 m"));
    thing_.setBearing(QStringLiteral("30"));
    EXPECT_EQ(thing_.bearing(), QStringLiteral("30°"));
    EXPECT_NEAR(std::max(tree().spread_m, tree().across_m.value_or(0.0)), 9.0, 1e-9);
    const auto box = cornersOf(garden(), *editor_.chosen());
    double farthest =
        0.0; // Closed form: the ends of a 9 m box that points 30 degrees east of north
    for (const auto corner : box)
        farthest = std::max(farthest, (corner.x - tree().position_m.x) * 0.5 +
                                          (corner.y - tree().position_m.y) * std::sqrt(0.75));
    EXPECT_NEAR(farthest, 4.5, 1e-6);
    thing_.setBearing(QStringLiteral("north"));
    EXPECT_TRUE(workspace_.problem().contains(QStringLiteral("degrees")));
    EXPECT_EQ(thing_.bearing(), QStringLiteral("30°"));
    const auto kept = garden();
    thing_.setCrownBase(QStringLiteral("13 m")); // over its top
    EXPECT_EQ(garden(), kept);
    EXPECT_FALSE(workspace_.problem().isEmpty());
}

TEST_F(PlanEditorTest, ABoxIsDrawnInOneDrag)
{
    editor_.setTool(static_cast<int>(PlanTool::strip));
    const QPointF a = at(-1, -1);
    const QPointF b = at(0.5, 4);
    editor_.dragBox(a.x(), a.y(), b.x() - 5, b.y() - 5);
    EXPECT_EQ(steps(), 0);
    EXPECT_FALSE(plan_.scene().draft.isEmpty());
    editor_.dropBox(a.x(), a.y(), b.x(), b.y());
    ASSERT_EQ(garden().strips.size(), 2u);
    EXPECT_NEAR(model::area_m2(garden().strips[1].outline_m), 1.5 * 5, 1e-9);
    EXPECT_TRUE(plan_.scene().draft.isEmpty());
}

TEST_F(PlanEditorTest, CornersAreTakenBackOneByOne)
{
    editor_.setTool(static_cast<int>(PlanTool::bed));
    click(1, 2);
    click(5, 2);
    click(5, 3);
    editor_.takeBackCorner();
    EXPECT_FALSE(editor_.canFinish());
    editor_.cancel();
    EXPECT_TRUE(editor_.drawing());
    editor_.cancel();
    EXPECT_FALSE(editor_.drawing());
    EXPECT_EQ(steps(), 0);
}

TEST_F(PlanEditorTest, AnOutlineThatCrossesItselfIsRefusedInWords)
{
    editor_.setTool(static_cast<int>(PlanTool::bed));
    click(1, 2);
    click(5, 4);
    click(5, 2);
    click(1, 4);
    editor_.finish();
    EXPECT_EQ(steps(), 0);
    EXPECT_FALSE(workspace_.problem().isEmpty());
    EXPECT_TRUE(editor_.drawing()); // to be drawn again
}

TEST_F(PlanEditorTest, ADragMovesACornerOrTheWholeInOneStep)
{
    choose(3, 10);
    ASSERT_EQ(editor_.chosenId(), "bed");
    QPointF from = at(5, 11);
    editor_.grab(QStringLiteral("bed"), 2, from.x(), from.y());
    for (double m = 0.1; m < 1.05; m += 0.1) {
        const QPointF to = at(5 + m, 11 + m);
        editor_.dragTo(to.x(), to.y());
    }
    editor_.drop();
    EXPECT_EQ(steps(), 1);
    EXPECT_NEAR(garden().plantings[0].outline_m[2].x, 6.0, 1e-9);
    from = at(3, 10);
    editor_.grab(QStringLiteral("bed"), -1, from.x(), from.y());
    const QPointF to = at(4, 9);
    editor_.dragTo(to.x(), to.y());
    editor_.drop();
    EXPECT_EQ(steps(), 2);
    EXPECT_NEAR(garden().plantings[0].outline_m[0].x, 2.0, 1e-9);
    EXPECT_NEAR(garden().plantings[0].outline_m[0].y, 8.0, 1e-9);
}

TEST_F(PlanEditorTest, TreesAreDraggedToo)
{
    const QPointF from = at(4, 6);
    editor_.grab(QStringLiteral("maple"), -1, from.x(), from.y());
    const QPointF to = at(2, 7);
    editor_.dragTo(to.x(), to.y());
    editor_.drop();
    EXPECT_NEAR(garden().trees[0].position_m.x, 2.0, 1e-9);
    EXPECT_EQ(workspace_.document().history().undoText(), QStringLiteral("move the maple"));
}

TEST_F(PlanEditorTest, ArrowKeysMoveByTheSmallStepAndARunIsOneStep)
{
    for (int i = 0; i < 4; ++i)
        editor_.nudge(QStringLiteral("path"), -1, 1, 0);
    editor_.nudge(QStringLiteral("path"), -1, 0, -1, true);
    EXPECT_NEAR(garden().strips[0].outline_m[0].x, 6.2, 1e-9);
    EXPECT_NEAR(garden().strips[0].outline_m[0].y, -0.5, 1e-9);
    EXPECT_EQ(steps(), 1);
}

TEST_F(PlanEditorTest, TheSmallestThingUnderTheHandIsChosen)
{
    editor_.setTool(static_cast<int>(PlanTool::lawn));
    for (const auto& corner :
         {std::pair(0, 8), std::pair(8, 8), std::pair(8, 12), std::pair(0, 12)})
        click(corner.first, corner.second);
    editor_.finish();
    choose(3, 10);
    EXPECT_EQ(editor_.chosenId(), "bed");
    choose(0.4, 11.5);
    EXPECT_EQ(editor_.chosenId(), "lawn-1");
    choose(4.0, 6.05);
    EXPECT_EQ(editor_.chosenId(), "maple");
    choose(-3, -3);
    EXPECT_FALSE(editor_.chosen());
}

TEST_F(PlanEditorTest, WhatIsTakenAwayTakesItsGoalsAlong)
{
    auto wished = smallGarden();
    model::Goal goal;
    goal.kind = model::GoalKind::light;
    goal.subject = "bed";
    wished.trees[0].goals = {goal};
    workspace_.document().start(wished);
    editor_.setEditing(true);
    choose(3, 10);
    editor_.removeChosen();
    EXPECT_TRUE(garden().plantings.empty());
    EXPECT_TRUE(garden().trees[0].goals.empty());
    EXPECT_FALSE(editor_.chosen());
    workspace_.document().history().undo();
    EXPECT_EQ(garden(), wished);
}

TEST_F(PlanEditorTest, ATreeCanBeTakenAwayAndComesBack)
{
    choose(4, 6);
    ASSERT_TRUE(thing_.isTree());
    editor_.removeChosen();
    EXPECT_TRUE(garden().trees.empty());
    EXPECT_EQ(workspace_.tree(), nullptr);
    workspace_.document().history().undo();
    EXPECT_NE(workspace_.tree(), nullptr);
}

TEST_F(PlanEditorTest, SizesAreTyped)
{
    choose(3, 10);
    EXPECT_EQ(thing_.length(), QStringLiteral("4\u00a0m"));
    EXPECT_EQ(thing_.width(), QStringLiteral("2\u00a0m"));
    thing_.setLength(QStringLiteral("6"));
    thing_.setWidth(QStringLiteral("80 cm"));
    EXPECT_NEAR(model::area_m2(garden().plantings[0].outline_m), 4.8, 1e-9);
    thing_.setEast(QStringLiteral("10 m"));
    thing_.setNorth(QStringLiteral("-1"));
    EXPECT_EQ(thing_.east(), QStringLiteral("10\u00a0m"));
    EXPECT_EQ(steps(), 4);
    thing_.setWidth(QStringLiteral("wide"));
    EXPECT_EQ(steps(), 4);
    EXPECT_FALSE(workspace_.problem().isEmpty());
}

TEST_F(PlanEditorTest, AHedgeGetsItsPlantAndItsHeight)
{
    choose(3, 10);
    thing_.setSort(0);
    EXPECT_EQ(garden().plantings[0].kind, model::PlantingKind::hedge);
    thing_.setPlantTyped(QStringLiteral("taxus bac"));
    ASSERT_EQ(thing_.plants().size(), 1);
    thing_.takePlant(0);
    EXPECT_EQ(garden().plantings[0].plant, "Taxus baccata");
    EXPECT_TRUE(thing_.plantTyped().contains(QStringLiteral("yew")));
    thing_.setPlantTyped(QStringLiteral("no such pl"));
    thing_.leavePlants();
    EXPECT_TRUE(thing_.plantTyped().contains(QStringLiteral("yew"))); // and not what was left there
    EXPECT_TRUE(thing_.plants().isEmpty());
    thing_.setHeight(QStringLiteral("1.8 m"));
    EXPECT_NEAR(garden().plantings[0].height_m, 1.8, 1e-9);
    thing_.setName(QStringLiteral("yew hedge"));
    EXPECT_EQ(garden().plantings[0].name, "yew hedge");
    EXPECT_EQ(workspace_.document().history().undoText(),
              QStringLiteral("change the name of bean bed"));
}

TEST_F(PlanEditorTest, AStripGetsItsUseAndTheHeadroomWanted)
{
    choose(6.5, 2);
    ASSERT_TRUE(thing_.isStrip());
    EXPECT_EQ(thing_.headroom(), QString());
    EXPECT_FALSE(thing_.usualHeadroom().isEmpty());
    thing_.setSort(static_cast<int>(model::StripUse::drive));
    thing_.setHeadroom(QStringLiteral("4.2"));
    EXPECT_EQ(garden().strips[0].use, model::StripUse::drive);
    EXPECT_NEAR(*garden().strips[0].headroom_m, 4.2, 1e-9);
    thing_.setHeadroom(QString());
    EXPECT_FALSE(garden().strips[0].headroom_m);
}

TEST_F(PlanEditorTest, AWireGetsItsHeightAndItsVoltage)
{
    editor_.setTool(static_cast<int>(PlanTool::line));
    click(0, 1);
    click(9, 1);
    editor_.finish();
    ASSERT_TRUE(thing_.isLine());
    thing_.setHeight(QStringLiteral("5.5"));
    thing_.setVoltage(QStringLiteral("0.4"));
    EXPECT_NEAR(garden().lines[0].path_m[1].z, 5.5, 1e-9);
    EXPECT_NEAR(*garden().lines[0].voltage_kV, 0.4, 1e-9);
    thing_.setVoltage(QStringLiteral("house"));
    EXPECT_NEAR(*garden().lines[0].voltage_kV, 0.4, 1e-9);
    EXPECT_FALSE(workspace_.problem().isEmpty());
}

TEST_F(PlanEditorTest, ThePlanStaysWhereItIsWhileItIsDrawnOn)
{
    const auto frame = plan_.frame();
    editor_.setTool(static_cast<int>(PlanTool::lawn));
    for (const auto& corner :
         {std::pair(-30, -30), std::pair(30, -30), std::pair(30, 30), std::pair(-30, 30)})
        click(corner.first, corner.second);
    editor_.finish();
    EXPECT_EQ(plan_.frame(), frame);
    editor_.setEditing(false);
    EXPECT_LT(plan_.frame().pixelsPerMetre, frame.pixelsPerMetre); // all of it again
}

TEST_F(PlanEditorTest, ZoomKeepsThePlaceUnderTheHand)
{
    const auto under = plan_.frame().toPlace({100, 80});
    plan_.zoom(100, 80, 2.0);
    EXPECT_NEAR(norm(plan_.frame().toPlace({100, 80}) - under), 0.0, 1e-9);
    EXPECT_FALSE(plan_.isFitted());
    const auto frame = plan_.frame();
    plan_.pan(50, -20);
    EXPECT_NEAR(plan_.frame().toCanvas(frame.toPlace({100, 100})).x(), 150, 1e-9);
    plan_.fit();
    EXPECT_LT(plan_.frame().pixelsPerMetre, frame.pixelsPerMetre);
}

TEST_F(PlanEditorTest, HandlesKeepTheirRowsWhileTheyMove)
{
    QAbstractItemModelTester tester(editor_.handles());
    choose(3, 10);
    EXPECT_EQ(editor_.handles()->rowCount(), 1 + 1 + 4); // a tree, the whole, its corners
    QSignalSpy resets(editor_.handles(), &QAbstractItemModel::modelReset);
    editor_.nudge(QStringLiteral("bed"), 0, 1, 1);
    EXPECT_EQ(resets.count(), 0);
    editor_.setEditing(false);
    EXPECT_EQ(editor_.handles()->rowCount(), 0);
}

} // namespace
} // namespace app
