#include "app/assess/assessor.hpp"
#include "tests/app/wait_for.hpp"

#include <QCoreApplication>

#include <gtest/gtest.h>

namespace app {
namespace {

using namespace std::chrono_literals;

/// Works that write down what they were asked, by the name of the garden.
struct Scripted {
    std::mutex mutex;
    std::vector<std::string> quick;
    std::vector<std::string> full;
    std::atomic<bool> fullRuns{false};
    std::atomic<bool> holdFull{false};
    std::atomic<int> stopped{0};

    Works works()
    {
        return {.quick =
                    [this](const Ask& ask) {
                        const std::lock_guard lock(mutex);
                        quick.push_back(ask.garden->name);
                        return QuickAnswer{};
                    },
                .shadow = [](const Ask&) { return ShadowAnswer{}; },
                .full =
                    [this](const Ask& ask, const std::atomic<bool>& cancel) {
                        fullRuns = true;
                        while (holdFull && !cancel)
                            std::this_thread::yield();
                        stopped += cancel ? 1 : 0;
                        const std::lock_guard lock(mutex);
                        full.push_back(ask.garden->name);
                        return model::Assessment{};
                    }};
    }
};

Ask about(const std::string& name)
{
    model::Garden garden;
    garden.name = name;
    return {std::make_shared<const model::Garden>(garden), {}, {}, {}};
}

class AssessorTest : public ::testing::Test {
protected:
    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    Scripted script_;
};

TEST_F(AssessorTest, AnswersQuicklyFirstAndFullyOnceSettled)
{
    Assessor assessor(script_.works(), 1ms);
    QStringList order;
    QObject::connect(&assessor, &Assessor::quickReady, [&] { order << QStringLiteral("quick"); });
    int shadows = 0;
    QObject::connect(&assessor, &Assessor::shadowReady, [&] { ++shadows; });
    QObject::connect(&assessor, &Assessor::fullReady, [&] { order << QStringLiteral("full"); });
    assessor.ask(about("one"));
    EXPECT_TRUE(assessor.isBusy());
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    EXPECT_EQ(order.join(QLatin1Char(' ')), QStringLiteral("quick full"));
    EXPECT_EQ(shadows, 1); // beside them, whenever it is done
}

TEST_F(AssessorTest, ANewAskStopsTheFullWorkOfAnOlderOneAndWins)
{
    script_.holdFull = true;
    Assessor assessor(script_.works(), 0ms);
    std::vector<std::string> answered;
    QObject::connect(&assessor, &Assessor::fullReady,
                     [&](const Ask& ask) { answered.push_back(ask.garden->name); });
    assessor.ask(about("old"));
    ASSERT_TRUE(waitFor([&] { return script_.fullRuns.load(); }));
    assessor.ask(about("new"));
    ASSERT_TRUE(waitFor([&] { return script_.stopped == 1; }));
    script_.holdFull = false;
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    EXPECT_EQ(answered, std::vector<std::string>{"new"});
}

TEST_F(AssessorTest, StoppingEndsTheFullWorkAndTheSameAskIsAnsweredInFullLater)
{
    script_.holdFull = true;
    Assessor assessor(script_.works(), 0ms);
    int full = 0;
    QObject::connect(&assessor, &Assessor::fullReady, [&] { ++full; });
    assessor.stop(); // nothing to stop: nothing happens
    EXPECT_FALSE(assessor.isBusy());
    assessor.ask(about("one"));
    ASSERT_TRUE(waitFor([&] { return script_.fullRuns.load(); }));
    assessor.stop();
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    EXPECT_EQ(script_.stopped, 1);
    EXPECT_EQ(full, 0);
    script_.holdFull = false;
    assessor.ask(about("one"));
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    EXPECT_EQ(full, 1);
}

TEST_F(AssessorTest, StoppingBeforeTheQuickAnswerStillGivesThat)
{
    Assessor assessor(script_.works(), 10s);
    int quick = 0;
    QObject::connect(&assessor, &Assessor::quickReady, [&] { ++quick; });
    assessor.ask(about("one"));
    assessor.stop();
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    EXPECT_EQ(quick, 1);
    EXPECT_TRUE(script_.full.empty());
}

TEST_F(AssessorTest, WhileAsksKeepComingNothingIsFullyAssessed)
{
    Assessor assessor(script_.works(), 10s);
    for (int i = 0; i < 50; ++i) {
        assessor.ask(about(std::to_string(i)));
        QCoreApplication::processEvents();
    }
    ASSERT_TRUE(waitFor([&] {
        const std::lock_guard lock(script_.mutex);
        return !script_.quick.empty() && script_.quick.back() == "49";
    }));
    EXPECT_TRUE(script_.full.empty());
    EXPECT_TRUE(assessor.isBusy());
}

TEST_F(AssessorTest, AnotherHourCostsNeitherLoadsNorSearch)
{
    Assessor assessor(script_.works(), 0ms);
    auto ask = about("one");
    assessor.ask(ask);
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    ask.instant += 1h;
    assessor.ask(ask);
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    EXPECT_EQ(script_.quick.size(), 1U);
    EXPECT_EQ(script_.full.size(), 1U);
}

TEST_F(AssessorTest, ARefusalIsToldAndTheNextAskIsAnswered)
{
    auto works = script_.works();
    const auto fine = works.quick;
    works.quick = [fine](const Ask& ask) {
        if (ask.garden->name == "bad")
            throw std::domain_error("no such tree");
        return fine(ask);
    };
    Assessor assessor(works, 0ms);
    QString problem;
    QObject::connect(&assessor, &Assessor::failed, [&](const QString& said) { problem = said; });
    assessor.ask(about("bad"));
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    EXPECT_EQ(problem, QStringLiteral("no such tree"));
    assessor.ask(about("good"));
    ASSERT_TRUE(waitFor([&] { return !assessor.isBusy(); }));
    EXPECT_EQ(script_.full, std::vector<std::string>{"good"});
}

TEST_F(AssessorTest, GoesAwayInTheMiddleOfWork)
{
    script_.holdFull = true;
    {
        Assessor assessor(script_.works(), 0ms);
        assessor.ask(about("one"));
        ASSERT_TRUE(waitFor([&] { return script_.fullRuns.load(); }));
    }
    EXPECT_EQ(script_.stopped, 1);
}

} // namespace
} // namespace app
