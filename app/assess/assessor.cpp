#include "app/assess/assessor.hpp"

#include <exception>

namespace app {
namespace {

bool sameLoads(const Ask& a, const Ask& b)
{
    return a.garden == b.garden && a.tree == b.tree && a.question.date == b.question.date &&
           a.question.gust_m_s == b.question.gust_m_s;
}

bool sameShadow(const Ask& a, const Ask& b)
{
    return a.garden == b.garden && a.instant == b.instant;
}

} // namespace

Assessor::Assessor(Works works, std::chrono::milliseconds settle, QObject* parent)
    : QObject(parent), works_(std::move(works)), settle_(settle),
      worker_([this](const std::stop_token& stop) { run(stop); })
{
}

Assessor::~Assessor()
{
    const std::lock_guard lock(mutex_);
    worker_.request_stop();
    cancel_ = true;
}

void Assessor::ask(Ask ask)
{
    {
        const std::lock_guard lock(mutex_);
        next_ = std::move(ask);
        ++asked_;
        cancel_ = true;
    }
    woken_.notify_all();
    if (!busy_) {
        busy_ = true;
        emit busyChanged();
    }
}

void Assessor::run(const std::stop_token& stop)
{
    while (!stop.stop_requested()) {
        std::optional<Ask> ask;
        long number = 0;
        {
            std::unique_lock lock(mutex_);
            if (!woken_.wait(lock, stop, [this] { return next_.has_value(); }))
                return;
            ask = std::exchange(next_, std::nullopt);
            number = asked_;
            cancel_ = stop.stop_requested();
        }
        try {
            answerQuickly(*ask);
            if (settles(stop))
                answerFully(*ask, number);
        } catch (const std::exception& refusal) {
            const auto problem = QString::fromUtf8(refusal.what());
            QMetaObject::invokeMethod(this, [this, problem] { emit failed(problem); });
            finish(number);
        }
    }
}

template <typename Answer, typename Signal>
void Assessor::deliver(const Ask& ask, Answer answer, Signal signal)
{
    auto shared = std::make_shared<const Answer>(std::move(answer));
    QMetaObject::invokeMethod(
        this, [this, ask, shared, signal] { emit(this->*signal)(ask, shared); },
        Qt::QueuedConnection);
}

void Assessor::answerQuickly(const Ask& ask)
{
    if (!lastQuick_ || !sameLoads(*lastQuick_, ask)) {
        deliver(ask, works_.quick(ask), &Assessor::quickReady);
        lastQuick_ = ask;
    }
    if (!lastShadow_ || !sameShadow(*lastShadow_, ask)) {
        deliver(ask, works_.shadow(ask), &Assessor::shadowReady);
        lastShadow_ = ask;
    }
}

bool Assessor::settles(const std::stop_token& stop)
{
    std::unique_lock lock(mutex_);
    return !woken_.wait_for(lock, stop, settle_, [this] { return next_.has_value(); }) &&
           !stop.stop_requested();
}

void Assessor::answerFully(const Ask& ask, long number)
{
    if (!lastFull_ || !sameLoads(*lastFull_, ask)) {
        auto assessment = works_.full(ask, cancel_);
        if (cancel_)
            return;
        deliver(ask, std::move(assessment), &Assessor::fullReady);
        lastFull_ = ask;
    }
    finish(number);
}

void Assessor::finish(long number)
{
    QMetaObject::invokeMethod(
        this,
        [this, number] {
            if (number != asked_ || !busy_)
                return;
            busy_ = false;
            emit busyChanged();
        },
        Qt::QueuedConnection);
}

} // namespace app
