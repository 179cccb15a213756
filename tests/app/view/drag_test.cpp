#include "app/view/answers_view_model.hpp"
#include "app/view/light_view_model.hpp"
#include "app/view/plan_view_model.hpp"
#include "app/view/side_view_model.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/wait_for.hpp"

#include <QCoreApplication>

#include <gtest/gtest.h>

namespace app {
namespace {

/// The pages that a drag goes through.
class DragPages {
public:
    explicit DragPages(model::Garden garden)
    {
        workspace.document().start(std::move(garden));
        side.resize(900, 500);
        plan.resize(420, 300);
    }
    void settle()
    {
        waitFor([this] { return !workspace.isBusy(); });
    }
    void waitFor(const std::function<bool()>& done) { ASSERT_TRUE(app::waitFor(done)); }
    QPointF handle(const QString& limb, int station)
    {
        auto& handles = *side.handles();
        for (int row = 0; row < handles.rowCount(); ++row) {
            const auto index = handles.index(row);
            if (handles.data(index, HandleModel::LimbId) == limb &&
                handles.data(index, HandleModel::Station) == station)
                return {handles.data(index, HandleModel::X).toDouble(),
                        handles.data(index, HandleModel::Y).toDouble()};
        }
        ADD_FAILURE() << "no handle";
        return {};
    }
    /// Moves the hand to and fro, each time until the quick answer is there, and lets go elsewhere
    /// than it began.
    void drag(const QString& limb, int station)
    {
        const QPointF from = handle(limb, station);
        side.grab(limb, station);
        for (int i = 1; i <= 12; ++i) {
            side.dragTo(from.x() + 6.0 * i, from.y() + (i % 3 == 0 ? -4.0 : 5.0));
            (void)side.scene(); // as a window does for each move
            (void)plan.scene();
            if (i % 2 == 0)
                waitFor([this] { return workspace.quickTree() == workspace.tree(); });
        }
        side.drop();
    }

    Workspace workspace{tables(), Units(QLocale(QLocale::English), Measures::metric),
                        modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    SideViewModel side{workspace};
    PlanViewModel plan{workspace, side};
    AnswersViewModel answers{workspace};
    LightViewModel light{workspace, plan, modelLightWorks(tables())};
};

void expectSame(const SideScene& a, const SideScene& b)
{
    ASSERT_EQ(a.leaves.size(), b.leaves.size());
    for (std::size_t i = 0; i < a.leaves.size(); ++i) {
        EXPECT_EQ(a.leaves[i].bodies, b.leaves[i].bodies);
        EXPECT_EQ(a.leaves[i].dabs, b.leaves[i].dabs);
        EXPECT_EQ(a.leaves[i].shoots, b.leaves[i].shoots);
        EXPECT_EQ(a.leaves[i].nearness, b.leaves[i].nearness);
        EXPECT_EQ(a.leaves[i].chosen, b.leaves[i].chosen);
    }
    ASSERT_EQ(a.limbs.size(), b.limbs.size());
    for (std::size_t i = 0; i < a.limbs.size(); ++i) {
        EXPECT_EQ(a.limbs[i].wood, b.limbs[i].wood);
        EXPECT_EQ(a.limbs[i].utilisation, b.limbs[i].utilisation);
    }
    ASSERT_EQ(a.needs.size(), b.needs.size());
    for (std::size_t i = 0; i < a.needs.size(); ++i) {
        EXPECT_EQ(a.needs[i].clearText, b.needs[i].clearText);
        EXPECT_EQ(a.needs[i].clear, b.needs[i].clear);
        EXPECT_EQ(a.needs[i].missing, b.needs[i].missing);
    }
}

void expectSame(const std::vector<model::headroom::StripHeadroom>& a,
                const std::vector<model::headroom::StripHeadroom>& b)
{
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        EXPECT_EQ(a[i].height_m, b[i].height_m);
        EXPECT_EQ(a[i].shortfall_m, b[i].shortfall_m);
        EXPECT_EQ(a[i].overhang_m2, b[i].overhang_m2);
        ASSERT_EQ(a[i].sagged.has_value(), b[i].sagged.has_value());
        EXPECT_EQ(a[i].sagged->height_m, b[i].sagged->height_m);
    }
}

class DragTest : public ::testing::Test {
protected:
    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
};

// Law: what is shown when the hand has rested is what a window shows that has just opened the
// garden, to the last digit.
TEST_F(DragTest, WhatIsShownAfterADragIsWhatAFreshWindowShows)
{
    DragPages dragged(smallGarden());
    dragged.drag(QStringLiteral("bough"), 2);
    dragged.drag(QStringLiteral("stem"), 1); // takes along all that rides on it
    dragged.settle();
    ASSERT_NE(dragged.workspace.garden(), smallGarden());

    DragPages fresh(dragged.workspace.garden());
    fresh.side.chooseLimb(dragged.side.chosenLimb());
    fresh.settle();

    const auto& was = *dragged.workspace.quick();
    const auto& is = *fresh.workspace.quick();
    ASSERT_EQ(was.load.limbs.size(), is.load.limbs.size());
    for (std::size_t i = 0; i < was.load.limbs.size(); ++i)
        EXPECT_EQ(was.load.limbs[i].utilisation, is.load.limbs[i].utilisation);
    EXPECT_EQ(was.load.mass_kg, is.load.mass_kg);
    expectSame(was.headroom, is.headroom);
    expectSame(dragged.side.scene(), fresh.side.scene());
    EXPECT_EQ(dragged.plan.scene().shadow, fresh.plan.scene().shadow);
    EXPECT_FALSE(fresh.plan.scene().shadow.isEmpty());
    EXPECT_EQ(dragged.answers.room()->facts(), fresh.answers.room()->facts());
    EXPECT_EQ(dragged.answers.storm()->facts(), fresh.answers.storm()->facts());
    EXPECT_EQ(dragged.answers.sun()->facts(), fresh.answers.sun()->facts());
    EXPECT_EQ(dragged.answers.stormNote(), fresh.answers.stormNote());
}

// Law: while the hand moves, loads and headroom are those of the moment: the loads to a millionth,
// what hangs at its heaviest to half a millimetre, nearer than anyone measures.
TEST_F(DragTest, WhatIsShownUnderTheHandIsTrue)
{
    DragPages dragged(smallGarden());
    dragged.drag(QStringLiteral("bough"), 2);
    const auto& tree = *dragged.workspace.tree();
    ASSERT_EQ(dragged.workspace.quickTree(), &tree); // the last move is answered
    const auto assessed =
        model::assess(dragged.workspace.garden(), tables(),
                      {dragged.workspace.date(), dragged.workspace.gust_m_s()}, tree.id);
    const auto& full = assessed.trees.front();
    const auto& quick = *dragged.workspace.quick();
    for (std::size_t i = 0; i < quick.load.limbs.size(); ++i)
        EXPECT_NEAR(quick.load.limbs[i].utilisation, full.load.limbs[i].utilisation, 1e-6);
    ASSERT_EQ(quick.headroom.size(), full.headroom.size());
    for (std::size_t i = 0; i < quick.headroom.size(); ++i) {
        EXPECT_EQ(quick.headroom[i].height_m, full.headroom[i].height_m);
        EXPECT_NEAR(*quick.headroom[i].sagged->height_m, *full.headroom[i].sagged->height_m, 5e-4);
    }
}

// Law: the map that has followed the hand is the map of a window that has just been asked for it.
TEST_F(DragTest, TheLightMapAfterADragIsThatOfAFreshWindow)
{
    const auto mapOf = [](DragPages& pages) {
        pages.waitFor([&] { return pages.plan.scene().map.has_value(); });
        pages.waitFor([&] { return !pages.light.isBusy(); });
        return pages.plan.scene().map->share;
    };
    DragPages dragged(smallGarden());
    dragged.light.setMapShown(true);
    (void)mapOf(dragged);
    dragged.drag(QStringLiteral("bough"), 2);
    dragged.settle();
    DragPages fresh(dragged.workspace.garden());
    fresh.light.setMapShown(true);
    EXPECT_EQ(mapOf(dragged), mapOf(fresh));
}

} // namespace
} // namespace app
