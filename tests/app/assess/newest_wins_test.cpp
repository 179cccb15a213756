#include "app/assess/newest_wins.hpp"
#include "tests/app/wait_for.hpp"

#include <QCoreApplication>
#include <QThread>

#include <gtest/gtest.h>

#include <numeric>
#include <stdexcept>
#include <vector>

namespace app {
namespace {

using namespace std::chrono_literals;

class NewestWinsTest : public ::testing::Test {
protected:
    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
};

TEST_F(NewestWinsTest, WhatIsToldIsDoneInItsOrderAndInTheOwnersThread)
{
    NewestWins worker(0ms);
    std::vector<int> done;
    bool elsewhere = false;
    worker.start([&](const NewestWins::Turn& turn) {
        for (int i = 0; i < 1000; ++i)
            turn.tell([&, i] {
                done.push_back(i);
                elsewhere |= QThread::currentThread() != application_.thread();
            });
    });
    ASSERT_TRUE(waitFor([&] { return !worker.isBusy(); }));
    std::vector<int> all(1000);
    std::iota(all.begin(), all.end(), 0);
    EXPECT_EQ(done, all) << "all of it before the worker says that it has ended";
    EXPECT_FALSE(elsewhere);
}

TEST_F(NewestWinsTest, WhatIsToldIsDroppedWithTheWorker)
{
    int done = 0;
    std::atomic<bool> told{false};
    {
        NewestWins worker(0ms);
        worker.start([&](const NewestWins::Turn& turn) {
            turn.tell([&] { ++done; });
            told = true;
        });
        while (!told)
            std::this_thread::yield();
    }
    QCoreApplication::processEvents();
    EXPECT_EQ(done, 0);
}

TEST_F(NewestWinsTest, OneThatIsToldMayEndTheWorker)
{
    auto worker = std::make_unique<NewestWins>(0ms);
    int done = 0;
    worker->start([&](const NewestWins::Turn& turn) {
        turn.tell([&] {
            ++done;
            worker.reset();
        });
        turn.tell([&] { ++done; });
    });
    ASSERT_TRUE(waitFor([&] { return !worker; }));
    QCoreApplication::processEvents();
    EXPECT_EQ(done, 1);
}

TEST_F(NewestWinsTest, ARefusalIsToldAndTheNextJobRuns)
{
    NewestWins worker(0ms);
    QString problem;
    QObject::connect(&worker, &NewestWins::failed, [&](const QString& what) { problem = what; });
    worker.start([](const NewestWins::Turn&) { throw std::domain_error("no such tree"); });
    ASSERT_TRUE(waitFor([&] { return !worker.isBusy(); }));
    EXPECT_EQ(problem.toStdString(), "no such tree");

    bool ran = false;
    worker.start([&](const NewestWins::Turn& turn) { turn.tell([&] { ran = true; }); });
    ASSERT_TRUE(waitFor([&] { return !worker.isBusy(); }));
    EXPECT_TRUE(ran);
}

} // namespace
} // namespace app
