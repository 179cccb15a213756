#include "app/view/limb_shape_view_model.hpp"
#include "app/view/limb_view_model.hpp"
#include "app/view/tree_view_model.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"

#include <QCoreApplication>

#include <gtest/gtest.h>

#include <cmath>

namespace app {
namespace {

class LimbTest : public ::testing::Test {
protected:
    LimbTest()
    {
        workspace_.document().start(smallGarden());
        side_.resize(900, 500);
        workspace_.chooseLimb("bough");
    }
    const model::Tree& tree() const { return *workspace_.tree(); }
    const model::Limb& bough() const { return tree().limbs.at(1); }
    int steps() { return workspace_.document().history().count(); }
    QPointF handle(int part)
    {
        auto& handles = *shape_.handles();
        for (int row = 0; row < handles.rowCount(); ++row)
            if (handles.data(handles.index(row), PlanHandleModel::Corner) == part)
                return {handles.data(handles.index(row), PlanHandleModel::X).toDouble(),
                        handles.data(handles.index(row), PlanHandleModel::Y).toDouble()};
        ADD_FAILURE() << "no handle " << part;
        return {};
    }

    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    SideViewModel side_{workspace_};
    LimbViewModel limb_{workspace_, side_};
    LimbShapeViewModel shape_{workspace_, side_};
    TreeViewModel tree_{workspace_};
};

TEST_F(LimbTest, ATypedGirthIsTapedWhereItWasTyped)
{
    limb_.setStation(1);
    limb_.setGirth(QStringLiteral("22 cm"));
    EXPECT_NEAR(bough().stations[1].diameter_m, 0.22 / M_PI, 1e-9);
    EXPECT_EQ(bough().measured, model::Measured::taped);
    EXPECT_EQ(bough().stations[0].diameter_m, 0.10);
    limb_.setStation(0);
    limb_.setDiameter(QStringLiteral("9"));
    EXPECT_NEAR(bough().stations[0].diameter_m, 0.09, 1e-9);
    EXPECT_EQ(steps(), 2);
    limb_.setGirth(QStringLiteral("thick"));
    EXPECT_EQ(steps(), 2);
    EXPECT_FALSE(workspace_.problem().isEmpty());
}

TEST_F(LimbTest, LeafUnionAndCropAreSet)
{
    limb_.setLeafRadius(QStringLiteral("0.9"));
    limb_.setHanging(QStringLiteral("40 cm"));
    limb_.setDensity(2);
    limb_.setUnionKind(2);
    limb_.setFruit(QStringLiteral("12 kg"));
    EXPECT_NEAR(bough().foliage->radius_m, 0.9, 1e-9);
    EXPECT_NEAR(bough().foliage->hanging_m, 0.4, 1e-9);
    EXPECT_EQ(bough().foliage->density, model::FoliageDensity::dense);
    EXPECT_EQ(bough().unionKind, model::Union::includedBark);
    EXPECT_NEAR(bough().fruit_kg, 12.0, 1e-9);
    EXPECT_EQ(steps(), 5);
    limb_.setLeafy(false);
    EXPECT_FALSE(bough().foliage);
    limb_.setLeafy(true);
    EXPECT_TRUE(bough().foliage);
}

TEST_F(LimbTest, DefectsAreMarkedAndTakenBack)
{
    EXPECT_TRUE(limb_.addDefect(0, QStringLiteral("0.5 m"), QStringLiteral("2 cm")));
    ASSERT_EQ(bough().defects.size(), 1u);
    EXPECT_EQ(bough().defects[0].kind, model::DefectKind::cavity);
    EXPECT_NEAR(*bough().defects[0].residualWall_m, 0.02, 1e-9);
    EXPECT_EQ(limb_.defects().size(), 1);
    EXPECT_FALSE(limb_.addDefect(3, QStringLiteral("50 m"), QString())); // beyond the tip
    EXPECT_FALSE(workspace_.problem().isEmpty());
    ASSERT_EQ(limb_.defectKinds().size(), 6);
    EXPECT_TRUE(limb_.addDefect(4, QStringLiteral("0.6 m"), QString()));
    EXPECT_EQ(workspace_.limb()->defects.back().kind, model::DefectKind::broken);
    limb_.removeDefect(static_cast<int>(workspace_.limb()->defects.size()) - 1);
    EXPECT_FALSE(limb_.addDefect(2, QStringLiteral("there"), QString()));
    limb_.removeDefect(0);
    EXPECT_TRUE(bough().defects.empty());
}

TEST_F(LimbTest, ALimbIsCopiedMirroredAndSplit)
{
    limb_.mirror();
    ASSERT_EQ(tree().limbs.size(), 3u);
    EXPECT_NEAR(tree().limbs[2].stations.back().position_m.x, -2.5, 1e-9); // looking north
    EXPECT_EQ(workspace_.limbId(), tree().limbs[2].id);
    workspace_.chooseLimb("bough");
    limb_.copy();
    EXPECT_EQ(tree().limbs.size(), 4u);
    workspace_.chooseLimb("bough");
    limb_.setStation(1);
    limb_.split();
    EXPECT_EQ(tree().limbs.size(), 5u);
    EXPECT_EQ(bough().stations.size(), 2u);
    EXPECT_EQ(steps(), 3);
    workspace_.chooseLimb("stem");
    limb_.copy();
    EXPECT_EQ(steps(), 3); // a tree has one trunk
}

TEST_F(LimbTest, HandlesChangeThicknessAndLeafInOneStep)
{
    const QPointF wide = handle(LimbShapeViewModel::LeafWidth);
    const double scale = side_.frame().pixelsPerMetre;
    shape_.grab(LimbShapeViewModel::LeafWidth);
    for (int i = 1; i <= 5; ++i)
        shape_.dragTo(wide.x(), wide.y() - 0.04 * i * scale);
    EXPECT_NEAR(bough().foliage->radius_m, 1.0, 1e-6);
    EXPECT_NEAR(handle(LimbShapeViewModel::LeafWidth).y(), wide.y() - 0.2 * scale, 1e-6);
    shape_.drop();
    EXPECT_EQ(steps(), 1);

    const QPointF low = handle(LimbShapeViewModel::Hanging);
    shape_.grab(LimbShapeViewModel::Hanging);
    shape_.dragTo(low.x(), low.y() + 0.5 * side_.frame().pixelsPerMetre);
    shape_.drop();
    EXPECT_NEAR(bough().foliage->hanging_m, 0.5, 1e-6);

    shape_.nudge(LimbShapeViewModel::Thickness, 4);
    EXPECT_NEAR(bough().stations[0].diameter_m, 0.12, 1e-9);
    EXPECT_NEAR(bough().stations[1].diameter_m, 0.096, 1e-9); // in proportion
    shape_.nudge(LimbShapeViewModel::Thickness, -4);
    EXPECT_EQ(steps(), 3);

    shape_.grab(LimbShapeViewModel::LeafStart);
    const auto to = side_.frame().toCanvas(model::axisPoint(bough(), 0.4).position_m);
    shape_.dragTo(to.x(), to.y());
    shape_.drop();
    EXPECT_NEAR(bough().foliage->from_m, 0.4, 1e-6);
}

TEST_F(LimbTest, ZoomKeepsThePlaceUnderTheHandAndHandlesFollow)
{
    const auto under = side_.frame().toPlace({300, 200}, 0.0);
    side_.zoom(300, 200, 2.0);
    EXPECT_NEAR(norm(side_.frame().toPlace({300, 200}, 0.0) - under), 0.0, 1e-9);
    EXPECT_FALSE(side_.isFitted());
    const QPointF before = handle(LimbShapeViewModel::Thickness);
    side_.pan(30, -10);
    EXPECT_NEAR(handle(LimbShapeViewModel::Thickness).x(), before.x() + 30, 1e-9);
    limb_.setFruit(QStringLiteral("3 kg"));
    EXPECT_FALSE(side_.isFitted()); // an edit leaves the view where it is
    side_.fit();
    EXPECT_TRUE(side_.isFitted());
}

TEST_F(LimbTest, TheTreeIsRenamedMarkedAndTakenAway)
{
    tree_.setName(QStringLiteral("the red maple"));
    EXPECT_EQ(tree().name, "the red maple");
    EXPECT_EQ(workspace_.document().history().undoText(), QStringLiteral("rename the maple"));
    tree_.setSeen(0, true);
    tree_.setSeen(3, true);
    EXPECT_TRUE(tree_.seen().at(0) && tree_.seen().at(3) && !tree_.seen().at(1));
    EXPECT_EQ(tree().observations[0].sign, model::Sign::fungus);
    tree_.setSeen(0, false);
    EXPECT_EQ(tree_.seen().count(true), 1);
    tree_.setVigour(3);
    EXPECT_EQ(tree().vigour, model::Vigour::stressed);
    tree_.setPlanted(QStringLiteral("1987"));
    EXPECT_EQ(*tree().plantedYear, 1987);
    tree_.setPlanted(QStringLiteral("long ago"));
    EXPECT_EQ(*tree().plantedYear, 1987);
    const auto before = workspace_.garden();
    tree_.remove();
    EXPECT_TRUE(workspace_.garden().trees.empty());
    EXPECT_FALSE(tree_.any());
    workspace_.document().history().undo();
    EXPECT_EQ(workspace_.garden(), before);
}

} // namespace
} // namespace app
