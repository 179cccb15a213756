#pragma once

#include <QObject>

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>
#include <utility>

namespace app {

/// A thread that works on the newest of the jobs it is given, so that the window never waits. A job
/// that comes while another is under way stops that one. Make it the owner's last member, so that
/// the thread ends before what its jobs use.
class NewestWins final : public QObject {
    Q_OBJECT

public:
    /// What a job may ask while it is at work, on the worker's thread.
    class Turn {
    public:
        /// Set once a newer job waits or the worker ends.
        [[nodiscard]] const std::atomic<bool>& cancel() const { return worker_.cancel_; }
        /// Waits until nothing new has come for the worker's `settle`. \return false if something
        /// has
        [[nodiscard]] bool settles() const;
        /// Has `what` done in the thread that the worker lives in, after all that was told before;
        /// never, if the worker is gone by then.
        void tell(std::function<void()> what) const { worker_.tell(std::move(what)); }

    private:
        friend class NewestWins;
        Turn(NewestWins& worker, const std::stop_token& stop) : worker_(worker), stop_(stop) {}
        NewestWins& worker_;
        const std::stop_token& stop_;
    };
    /// \throws std::exception  what() is told by failed()
    using Job = std::function<void(const Turn&)>;

    explicit NewestWins(std::chrono::milliseconds settle);
    ~NewestWins() override;

    void start(Job job);
    /// True from a job's start until it, or a newer one, has ended.
    [[nodiscard]] bool isBusy() const { return busy_; }

signals:
    // Both come in the thread that the worker lives in.
    void failed(const QString& problem);
    void busyChanged();

protected:
    void customEvent(QEvent* event) override;

private:
    void tell(std::function<void()> what);
    void run(const std::stop_token& stop);
    void finish(long number);

    std::chrono::milliseconds settle_;
    bool busy_{};

    std::mutex mutex_; ///< guards the four below
    std::condition_variable_any woken_;
    Job next_;
    long started_{};
    std::deque<std::function<void()>> told_; ///< and not done yet

    std::atomic<bool> cancel_{false};
    std::jthread thread_; ///< last, so that it ends first
};

} // namespace app
