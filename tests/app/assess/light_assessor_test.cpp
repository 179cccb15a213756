#include "app/assess/light_assessor.hpp"
#include "model/light/daylight.hpp"
#include "model/light/light_study.hpp"
#include "model/light/sample_day.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/wait_for.hpp"
#include "tests/model/species/table_files.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <gtest/gtest.h>

namespace app {
namespace {

using namespace std::chrono_literals;

LightWanted lightOf(const std::string& name, bool map = true)
{
    model::Garden garden;
    garden.name = name;
    return {std::make_shared<const model::Garden>(garden), {}, std::chrono::year{2025}, map};
}

class LightAssessorTest : public ::testing::Test {
protected:
    LightWorks works()
    {
        return {.map =
                    [](const LightWanted& wanted) {
                        if (wanted.garden->name == "bad")
                            throw std::domain_error("no such tree");
                        return SunMap{};
                    },
                .year =
                    [this](const LightWanted&, const std::atomic<bool>& cancel) {
                        runs = true;
                        while (hold && !cancel)
                            std::this_thread::yield();
                        return model::LightYear{};
                    }};
    }

    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    std::atomic<bool> runs{false};
    std::atomic<bool> hold{false};
};

TEST_F(LightAssessorTest, StoppingEndsTheYearAndTheSameWishIsAnsweredLater)
{
    hold = true;
    LightAssessor assessor(works(), 0ms);
    int years = 0;
    QObject::connect(&assessor, &LightAssessor::yearReady, [&] { ++years; });
    assessor.want(lightOf("one"));
    ASSERT_TRUE(waitFor([&] { return runs.load(); }));
    assessor.stop();
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    EXPECT_EQ(years, 0);
    hold = false;
    assessor.want(lightOf("one"));
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    EXPECT_EQ(years, 1);
}

TEST_F(LightAssessorTest, ShowsTheMapFirstAndTheYearOnceSettled)
{
    LightAssessor assessor(works(), 1ms);
    QStringList order;
    QObject::connect(&assessor, &LightAssessor::mapReady, [&] { order << QStringLiteral("map"); });
    QObject::connect(&assessor, &LightAssessor::yearReady,
                     [&] { order << QStringLiteral("year"); });
    assessor.want(lightOf("one"));
    EXPECT_TRUE(assessor.isBusy());
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    EXPECT_EQ(order.join(QLatin1Char(' ')), QStringLiteral("map year"));
}

TEST_F(LightAssessorTest, ANewWishStopsAnOlderYear)
{
    hold = true;
    LightAssessor assessor(works(), 0ms);
    std::vector<std::string> answered;
    QObject::connect(&assessor, &LightAssessor::yearReady,
                     [&](const LightWanted& wanted) { answered.push_back(wanted.garden->name); });
    assessor.want(lightOf("old"));
    ASSERT_TRUE(waitFor([&] { return runs.load(); }));
    hold = false;
    assessor.want(lightOf("new"));
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    ASSERT_FALSE(answered.empty());
    EXPECT_EQ(answered.back(), "new");
}

TEST_F(LightAssessorTest, ARefusalIsToldAndTheNextWishIsAnswered)
{
    LightAssessor assessor(works(), 0ms);
    QString problem;
    QObject::connect(&assessor, &LightAssessor::failed,
                     [&](const QString& said) { problem = said; });
    assessor.want(lightOf("bad"));
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy() && !problem.isEmpty(); }));
    EXPECT_EQ(problem, QStringLiteral("no such tree"));
    bool answered = false;
    QObject::connect(&assessor, &LightAssessor::yearReady, [&] { answered = true; });
    assessor.want(lightOf("good"));
    EXPECT_TRUE(waitFor([&] { return answered; }));
}

TEST_F(LightAssessorTest, GoesAwayInTheMiddleOfWork)
{
    hold = true;
    LightAssessor assessor(works(), 0ms);
    assessor.want(lightOf("one"));
    EXPECT_TRUE(waitFor([&] { return runs.load(); }));
}

// Law: the map that follows a limb under the hand is the one that a fresh study would give.
TEST(ModelLightWorks, FollowADraggedLimbAsIfReckonedAnew)
{
    const auto drawn = std::make_shared<const model::Garden>(smallGarden());
    auto dragged = smallGarden();
    dragged.trees[0].limbs[1].stations.back().position_m = {2.0, 1.5, 3.4};
    const auto after = std::make_shared<const model::Garden>(dragged);
    const auto followed = modelLightWorks(shippedTables());
    const auto before = followed.map({drawn, "maple", std::chrono::year{2025}, true});
    const auto kept = followed.map({after, "maple", std::chrono::year{2025}, true});
    const auto anew =
        modelLightWorks(shippedTables()).map({after, "maple", std::chrono::year{2025}, true});
    ASSERT_EQ(kept.points.size(), kept.grid.columns * kept.grid.rows);
    ASSERT_EQ(kept.points.size(), anew.points.size());
    double moved = 0.0;
    for (std::size_t i = 0; i < kept.points.size(); ++i) {
        EXPECT_NEAR(kept.points[i].sun_h, anew.points[i].sun_h, 1e-9);
        EXPECT_LE(kept.points[i].sun_h, kept.open_h + 1e-6);
        moved += std::abs(kept.points[i].sun_h - before.points[i].sun_h);
    }
    EXPECT_GT(moved, 1.0);
}

} // namespace
} // namespace app
