#include "app/assess/light_assessor.hpp"

#include <exception>

namespace app {

LightAssessor::LightAssessor(LightWorks works, std::chrono::milliseconds settle, QObject* parent)
    : QObject(parent), works_(std::move(works)), settle_(settle),
      worker_([this](const std::stop_token& stop) { run(stop); })
{
}

LightAssessor::~LightAssessor()
{
    const std::lock_guard lock(mutex_);
    worker_.request_stop();
    cancel_ = true;
}

void LightAssessor::want(LightWanted wanted)
{
    {
        const std::lock_guard lock(mutex_);
        next_ = std::move(wanted);
        ++wanted_;
        cancel_ = true;
    }
    woken_.notify_all();
    if (!busy_) {
        busy_ = true;
        emit busyChanged();
    }
}

void LightAssessor::run(const std::stop_token& stop)
{
    while (!stop.stop_requested()) {
        std::optional<LightWanted> wanted;
        long number = 0;
        {
            std::unique_lock lock(mutex_);
            if (!woken_.wait(lock, stop, [this] { return next_.has_value(); }))
                return;
            wanted = std::exchange(next_, std::nullopt);
            number = wanted_;
            cancel_ = stop.stop_requested();
        }
        try {
            answer(*wanted, stop);
        } catch (const std::exception& refusal) {
            const auto problem = QString::fromUtf8(refusal.what());
            QMetaObject::invokeMethod(this, [this, problem] { emit failed(problem); });
        }
        finish(number);
    }
}

void LightAssessor::answer(const LightWanted& wanted, const std::stop_token& stop)
{
    const auto same = [&](const std::optional<LightWanted>& last) {
        return last && last->garden == wanted.garden && last->year == wanted.year;
    };
    if (wanted.map && !same(lastMap_)) {
        const auto map = std::make_shared<const SunMap>(works_.map(wanted));
        lastMap_ = wanted;
        QMetaObject::invokeMethod(
            this, [this, map] { emit mapReady(map); }, Qt::QueuedConnection);
    }
    if (same(lastYear_))
        return;
    {
        std::unique_lock lock(mutex_);
        if (woken_.wait_for(lock, stop, settle_, [this] { return next_.has_value(); }) ||
            stop.stop_requested())
            return;
    }
    const auto year = std::make_shared<const model::LightYear>(works_.year(wanted, cancel_));
    if (cancel_)
        return;
    lastYear_ = wanted;
    QMetaObject::invokeMethod(
        this, [this, wanted, year] { emit yearReady(wanted, year); }, Qt::QueuedConnection);
}

void LightAssessor::finish(long number)
{
    QMetaObject::invokeMethod(
        this,
        [this, number] {
            if (number != wanted_ || !busy_)
                return;
            busy_ = false;
            emit busyChanged();
        },
        Qt::QueuedConnection);
}

} // namespace app
