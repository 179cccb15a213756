#include "app/view/offers_view_model.hpp"
#include "app/view/stages_view_model.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/wait_for.hpp"

#include <QAbstractItemModelTester>

#include <gtest/gtest.h>

#include <thread>

namespace app {
namespace {

using model::advice::Lack;
using model::advice::Offer;
using model::advice::TradeOff;

model::Cut lifted(double height_m)
{
    return {model::CutKind::reduction, "bough", height_m, {}, {}, {}};
}

/// Two steps of headroom over the path, of which the second clears it.
TradeOff twoSteps()
{
    TradeOff tradeOff;
    tradeOff.lack = Lack::headroom;
    tradeOff.subjects = {"path"};
    tradeOff.now = {1.5};
    tradeOff.wanted = {2.5};
    tradeOff.offers = {{0.10, 0.08, {lifted(1.5)}, {2.0}},
                       {0.15, 0.08, {lifted(1.5)}, {2.0}}, // no more than before
                       {0.20, 0.20, {lifted(0.5)}, {std::nullopt}}};
    return tradeOff;
}

class OutlookTest : public ::testing::Test {
protected:
    OutlookTest() { start(smallGarden()); }

    void start(const model::Garden& garden)
    {
        workspace_.document().start(garden);
        ASSERT_TRUE(waitFor([this] { return !workspace_.isBusy(); }));
    }
    OutlookWorks scripted()
    {
        return {[this](const OutlookAsk&, const std::atomic<bool>& cancel) {
                    ++asked_;
                    while (hold_ && !cancel)
                        std::this_thread::yield();
                    return std::vector{twoSteps()};
                },
                [](const OutlookAsk&, const model::advice::Suggestion& first,
                   const std::atomic<bool>&) {
                    model::advice::Stages stages;
                    stages.visits.resize(2);
                    stages.visits[0].date = std::chrono::year{2025} / 7 / 3;
                    stages.visits[1].date = std::chrono::year{2027} / 2 / 1;
                    stages.visits[0].suggestion = first;
                    stages.reached = true;
                    return stages;
                }};
    }

    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    TrialViewModel trial_{workspace_};
    std::atomic<int> asked_{0};
    std::atomic<bool> hold_{false};
    OffersViewModel offers_{workspace_, trial_, scripted()};
};

TEST_F(OutlookTest, NothingIsWeighedUntilItIsLookedAt)
{
    EXPECT_EQ(asked_, 0);
    offers_.setShown(true);
    ASSERT_TRUE(waitFor([this] { return offers_.points()->rowCount() > 0; }));
    EXPECT_EQ(asked_, 1);
    offers_.setShown(false);
    start(smallGarden());
    EXPECT_EQ(asked_, 1);
}

TEST_F(OutlookTest, TheCurveStartsAtTheTreeAsItStandsAndLeavesOutWhatBuysNoMore)
{
    const QAbstractItemModelTester tester(offers_.points());
    offers_.setShown(true);
    ASSERT_TRUE(waitFor([this] { return offers_.points()->rowCount() > 0; }));
    const auto& points = offers_.points()->points();
    ASSERT_EQ(points.size(), 3u);
    EXPECT_EQ(points[0].along, 0.0);
    EXPECT_EQ(points[0].up, 0.0);
    EXPECT_NEAR(points[1].along, 0.4, 1e-12);
    EXPECT_NEAR(points[1].up, 0.5, 1e-12); // half-way from 1.5 to the 2.5 m wanted
    EXPECT_EQ(points[2].along, 1.0);
    EXPECT_EQ(points[2].up, 1.0);
    EXPECT_EQ(offers_.wanted(), 1.0);
    EXPECT_EQ(points[1].reached, workspace_.units().length(2.0));
    EXPECT_TRUE(points[0].taken);
}

TEST_F(OutlookTest, APointThatIsTakenTriesItsCuts)
{
    offers_.setShown(true);
    ASSERT_TRUE(waitFor([this] { return offers_.points()->rowCount() > 0; }));
    offers_.take(2);
    ASSERT_TRUE(waitFor([this] { return workspace_.trial() != nullptr; }));
    EXPECT_EQ(workspace_.trial()->judged.cuts.size(), 1u);
    EXPECT_TRUE(offers_.points()->points()[2].taken);
    EXPECT_FALSE(offers_.points()->points()[0].taken);
    EXPECT_FALSE(workspace_.document().isDirty());
    offers_.take(0);
    EXPECT_EQ(trial_.count(), 0);
    EXPECT_TRUE(offers_.points()->points()[0].taken);
}

TEST_F(OutlookTest, StoppedItShowsWhatItHasAndSaysThatItIsNotAll)
{
    hold_ = true;
    offers_.setShown(true);
    ASSERT_TRUE(waitFor([this] { return asked_ == 1; }));
    EXPECT_TRUE(offers_.isBusy());
    offers_.stop();
    ASSERT_TRUE(waitFor([this] { return offers_.points()->rowCount() > 0; }));
    EXPECT_TRUE(offers_.isStale());
    offers_.take(1);
    EXPECT_EQ(trial_.count(), 0);
}

TEST_F(OutlookTest, AChangeStopsAnOldSearchAndTheNewestAnswerCounts)
{
    hold_ = true;
    offers_.setShown(true);
    ASSERT_TRUE(waitFor([this] { return asked_ == 1; }));
    auto tree = *workspace_.tree();
    tree.limbs[1].stations[2].position_m.z += 0.1;
    ASSERT_TRUE(workspace_.changeTree(QStringLiteral("lift"), tree));
    ASSERT_TRUE(waitFor([this] { return asked_ == 2; }));
    EXPECT_EQ(offers_.points()->rowCount(), 0); // that of the old tree is not shown
    hold_ = false;
    ASSERT_TRUE(waitFor([this] { return offers_.points()->rowCount() > 0; }));
    EXPECT_FALSE(offers_.isStale());
}

TEST_F(OutlookTest, VisitsAreToldOnlyWhereOneIsNotEnough)
{
    StagesViewModel stages(workspace_, scripted());
    auto garden = smallGarden();
    start(garden);
    EXPECT_EQ(stages.isNeeded(), workspace_.treeAssessment()->suggestion.outcome ==
                                     model::advice::Outcome::notWithinGuideline);
    garden.trees[0].vigour = model::Vigour::old; // a tenth may go, and the bough bears more
    start(garden);
    ASSERT_EQ(workspace_.treeAssessment()->suggestion.outcome,
              model::advice::Outcome::notWithinGuideline);
    EXPECT_TRUE(stages.isNeeded());
    ASSERT_TRUE(waitFor([&] { return stages.visits()->rowCount() == 2; }));
    EXPECT_TRUE(stages.headline().contains(QLatin1Char('2')));
    const auto first = stages.visits()->index(0);
    EXPECT_EQ(stages.visits()->data(first, StageModel::When).toString(),
              workspace_.units().date(std::chrono::year{2025} / 7 / 3));
}

TEST_F(OutlookTest, TheModelsOwnWorksGiveWhatTheCommandLineGives)
{
    const auto works = modelOutlookWorks(tables());
    const std::atomic<bool> cancel{false};
    const auto garden = workspace_.document().garden();
    const auto found = works.offers({garden, "maple", workspace_.date()}, cancel);
    ASSERT_FALSE(found.empty());
    for (const auto& tradeOff : found)
        EXPECT_EQ(tradeOff.now.size(), tradeOff.subjects.size());
}

} // namespace
} // namespace app
