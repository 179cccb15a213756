#include "app/view/goals_view_model.hpp"
#include "app/view/work_view_model.hpp"
#include "model/advice/prune.hpp"
#include "model/load/limb_load.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/wait_for.hpp"

#include <QAbstractItemModelTester>
#include <QCoreApplication>

#include <gtest/gtest.h>

namespace app {
namespace {

class TrialTest : public ::testing::Test {
protected:
    TrialTest()
    {
        workspace_.document().start(smallGarden());
        settle();
    }
    void settle()
    {
        QCoreApplication::processEvents();
        ASSERT_TRUE(waitFor([this] { return !workspace_.isBusy() && !trial().isBusy(); }));
        QCoreApplication::processEvents();
        ASSERT_FALSE(workspace_.isBusy() || trial().isBusy());
    }
    TrialViewModel& trial() { return *work_.trial(); }
    GoalsViewModel& goals() { return *work_.goals(); }
    const std::vector<model::Goal>& goalsOfTree() const { return workspace_.tree()->goals; }

    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    WorkViewModel work_{workspace_};
};

TEST_F(TrialTest, TriesWithoutChangingTheGarden)
{
    const auto before = workspace_.document().garden();
    trial().sawAt(QStringLiteral("bough"), 0.05);
    settle();
    EXPECT_EQ(trial().count(), 1);
    EXPECT_EQ(trial().cuts()->rowCount(), 1);
    EXPECT_EQ(workspace_.document().garden(), before);
    EXPECT_FALSE(workspace_.document().isDirty());
    ASSERT_TRUE(workspace_.treeAfter());
    EXPECT_EQ(model::limbIndex(*workspace_.treeAfter(), "bough"), model::kNoLimb);
    trial().sawAt(QStringLiteral("bough"), 0.05); // once more takes it back
    settle();
    EXPECT_EQ(trial().count(), 0);
    EXPECT_FALSE(workspace_.trial());
}

// Brute force: the figures are those of the tree cut and reckoned by itself.
TEST_F(TrialTest, TellsWhatTheCutTreeCarries)
{
    trial().sawAt(QStringLiteral("bough"), 0.0);
    settle();
    const auto& tree = *workspace_.tree();
    const auto& species = *workspace_.species();
    const auto foliation = model::foliate(tree, species);
    const model::Cut removal{model::CutKind::removal, "bough", 0.0, {}, {}, {}};
    const auto standing = model::advice::afterCut(tree, removal);
    const auto load = model::load::treeLoad(
        standing, foliation, species, workspace_.garden().place, workspace_.garden().exposure,
        model::conditionsOn(workspace_.date(), tree, species, workspace_.garden().place,
                            workspace_.gust_m_s()));
    EXPECT_DOUBLE_EQ(workspace_.trial()->loadAfter.baseMoment_Nm, load.baseMoment_Nm);
    const auto& facts = trial().effects()->facts();
    const auto foot = std::ranges::find_if(facts, [](const Fact& fact) {
        return fact.subject.contains(QStringLiteral("foot of the stem"));
    });
    ASSERT_NE(foot, facts.end());
    EXPECT_EQ(foot->after, workspace_.units().moment(load.baseMoment_Nm));
}

TEST_F(TrialTest, NamesTheRuleThatACutBreaks)
{
    trial().sawAt(QStringLiteral("stem"), 3.2);
    settle();
    EXPECT_FALSE(trial().broken().isEmpty());
    EXPECT_EQ(trial().tone(), Tone::Grave);
    trial().clear();
    settle();
    EXPECT_TRUE(trial().broken().isEmpty());
}

TEST_F(TrialTest, StartsFromTheSuggestedCutsAndPutsOneBack)
{
    ASSERT_GT(work_.cuts()->rowCount(), 0);
    trial().takeSuggested();
    settle();
    EXPECT_EQ(trial().cuts()->rowCount(), work_.cuts()->rowCount());
    EXPECT_NEAR(trial().leafShare(), work_.leafShare(), 1e-12);
    const int count = trial().count();
    trial().putBack(0);
    settle();
    EXPECT_EQ(trial().count(), count - 1);
}

TEST_F(TrialTest, ForgetsCutsOnLimbsThatAreErased)
{
    trial().sawAt(QStringLiteral("bough"), 0.0);
    settle();
    auto without = model::advice::afterCut(*workspace_.tree(),
                                           {model::CutKind::removal, "bough", 0.0, {}, {}, {}});
    ASSERT_TRUE(workspace_.changeTree(QStringLiteral("erase"), without));
    settle();
    EXPECT_EQ(trial().count(), 0);
    EXPECT_FALSE(workspace_.trial());
}

TEST_F(TrialTest, ModelsAreSound)
{
    const QAbstractItemModelTester cuts(trial().cuts());
    const QAbstractItemModelTester effects(trial().effects());
    const QAbstractItemModelTester wanted(goals().goals());
    trial().sawAt(QStringLiteral("bough"), 0.0);
    goals().keep(QStringLiteral("bough"));
    settle();
}

TEST_F(TrialTest, AKeptLimbIsLeftByTheNextSuggestion)
{
    ASSERT_GT(work_.cuts()->rowCount(), 0);
    const auto limb = work_.cuts()->data(work_.cuts()->index(0), CutModel::LimbId).toString();
    goals().keep(limb);
    settle();
    ASSERT_EQ(goalsOfTree().size(), 1U);
    EXPECT_EQ(goalsOfTree()[0].kind, model::GoalKind::keep);
    for (int row = 0; row < work_.cuts()->rowCount(); ++row)
        EXPECT_NE(work_.cuts()->data(work_.cuts()->index(row), CutModel::LimbId).toString(), limb);
    goals().lose(limb); // instead
    settle();
    ASSERT_EQ(goalsOfTree().size(), 1U);
    EXPECT_EQ(goalsOfTree()[0].kind, model::GoalKind::lose);
    workspace_.document().history().undo();
    EXPECT_EQ(goalsOfTree()[0].kind, model::GoalKind::keep);
    goals().remove(0);
    EXPECT_TRUE(goalsOfTree().empty());
}

TEST_F(TrialTest, GoalsAreReadAsTypedOrRefusedInOneLine)
{
    EXPECT_TRUE(goals().relieve(QStringLiteral("80 %")));
    EXPECT_DOUBLE_EQ(*goalsOfTree().back().value, 0.8);
    EXPECT_TRUE(goals().relieve(QStringLiteral("70 %"))); // replaces it
    EXPECT_EQ(goalsOfTree().size(), 1U);
    EXPECT_TRUE(goals().light(0, QStringLiteral("4,5 h")));
    EXPECT_DOUBLE_EQ(*goalsOfTree().back().value, 4.5);
    EXPECT_TRUE(goals().light(0, QString()));
    EXPECT_FALSE(goalsOfTree().back().value);
    EXPECT_FALSE(goals().takeAtMost(QStringLiteral("much")));
    EXPECT_TRUE(workspace_.problem().contains(QStringLiteral("much")));
    EXPECT_EQ(goalsOfTree().size(), 2U);
    settle();
    EXPECT_FALSE(goals().goals()->facts().front().figure.isEmpty()) << "what became of it";
}

// Law: a fruit tree's limb can be renewed by the share that is usual for it, and its middle opened;
// neither is offered of another tree.
TEST_F(TrialTest, RenewsAndOpensFruitTreesOnly)
{
    auto tree = *workspace_.tree();
    tree.species = "Malus domestica";
    auto upright = *std::ranges::find(tree.limbs, "bough", &model::Limb::id);
    upright.id = "upright";
    upright.stations = {
        {upright.stations.front().position_m, 0.02, {}},
        {upright.stations.front().position_m + model::Vec3{0.0, 0.0, 1.0}, 0.01, {}}};
    upright.foliage = model::Foliage{0.3, 0.2, 0.0, {}, model::FoliageDensity::medium, 0.0, {}};
    upright.defects.clear();
    upright.props.clear();
    tree.limbs.push_back(upright);
    ASSERT_TRUE(workspace_.changeTree(QStringLiteral("an apple"), tree));
    settle();
    workspace_.chooseLimb("bough");
    ASSERT_TRUE(trial().canOpenMiddle());
    trial().openMiddle();
    settle();
    ASSERT_EQ(trial().count(), 1);
    EXPECT_EQ(model::limbIndex(*workspace_.treeAfter(), "upright"), model::kNoLimb);
    trial().clear();
    settle();
    workspace_.chooseLimb("upright");
    ASSERT_TRUE(trial().canRenew());
    trial().renewChosenLimb();
    settle();
    const auto& after = *workspace_.treeAfter();
    EXPECT_NEAR(after.limbs[model::limbIndex(after, "upright")].foliage->thinned, 0.20, 1e-12);
    ASSERT_TRUE(goals().canOpenMiddle());
    goals().openMiddle();
    EXPECT_FALSE(goals().canOpenMiddle());
    EXPECT_EQ(goalsOfTree().back().kind, model::GoalKind::openCentre);
    tree.species = "Quercus robur";
    tree.goals.clear();
    ASSERT_TRUE(workspace_.changeTree(QStringLiteral("an oak"), tree));
    settle();
    EXPECT_FALSE(trial().canRenew());
    EXPECT_FALSE(trial().canOpenMiddle());
    EXPECT_FALSE(goals().canOpenMiddle());
}

} // namespace
} // namespace app
