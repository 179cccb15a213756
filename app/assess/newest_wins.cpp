#include "app/assess/newest_wins.hpp"

#include <QCoreApplication>
#include <QEvent>

#include <exception>
#include <utility>

namespace app {

NewestWins::NewestWins(std::chrono::milliseconds settle)
    : settle_(settle), thread_([this](const std::stop_token& stop) { run(stop); })
{
}

NewestWins::~NewestWins()
{
    const std::lock_guard lock(mutex_);
    thread_.request_stop();
    cancel_ = true;
}

void NewestWins::start(Job job)
{
    {
        const std::lock_guard lock(mutex_);
        next_ = std::move(job);
        ++started_;
        cancel_ = true;
    }
    woken_.notify_all();
    if (!busy_) {
        busy_ = true;
        emit busyChanged();
    }
}

bool NewestWins::Turn::settles() const
{
    std::unique_lock lock(worker_.mutex_);
    return !worker_.woken_.wait_for(lock, stop_, worker_.settle_, [this] {
        return bool(worker_.next_);
    }) && !stop_.stop_requested();
}

void NewestWins::run(const std::stop_token& stop)
{
    while (!stop.stop_requested()) {
        Job job;
        long number = 0;
        {
            std::unique_lock lock(mutex_);
            if (!woken_.wait(lock, stop, [this] { return bool(next_); }))
                return;
            job = std::exchange(next_, nullptr);
            number = started_;
            cancel_ = stop.stop_requested();
        }
        try {
            job(Turn(*this, stop));
        } catch (const std::exception& refusal) {
            const auto problem = QString::fromUtf8(refusal.what());
            tell([this, problem] { emit failed(problem); });
        }
        finish(number);
    }
}

void NewestWins::finish(long number)
{
    tell([this, number] {
        if (number != started_ || !busy_)
            return;
        busy_ = false;
        emit busyChanged();
    });
}

// What is told is kept here rather than in the event: a build that watches threads sees this lock,
// and does not see those of Qt's own queue.
void NewestWins::tell(std::function<void()> what)
{
    {
        const std::lock_guard lock(mutex_);
        told_.push_back(std::move(what));
    }
    QCoreApplication::postEvent(this, new QEvent(QEvent::User));
}

void NewestWins::customEvent(QEvent* /*event*/)
{
    std::function<void()> what;
    {
        const std::lock_guard lock(mutex_);
        what = std::move(told_.front());
        told_.pop_front();
    }
    what();
}

} // namespace app
