#include "app/assess/assessor.hpp"

#include <utility>

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
    : QObject(parent), works_(std::move(works)), worker_(settle),
      shadowWorker_(std::chrono::milliseconds(0))
{
    for (auto* worker : {&worker_, &shadowWorker_}) {
        connect(worker, &NewestWins::busyChanged, this, &Assessor::busyChanged);
        connect(worker, &NewestWins::failed, this, &Assessor::failed);
    }
}

void Assessor::ask(Ask ask)
{
    asked_ = ask;
    shadowWorker_.start([this, ask](const NewestWins::Turn& turn) { castShadows(ask, turn); });
    worker_.start([this, ask = std::move(ask)](const NewestWins::Turn& turn) {
        answerQuickly(ask, turn);
        if (turn.settles())
            answerFully(ask, turn);
    });
}

void Assessor::stop()
{
    if (asked_ && worker_.isBusy())
        worker_.start(
            [this, ask = *asked_](const NewestWins::Turn& turn) { answerQuickly(ask, turn); });
}

template <typename Answer, typename Signal>
void Assessor::deliver(const NewestWins::Turn& turn, const Ask& ask, Answer answer, Signal signal)
{
    auto shared = std::make_shared<const Answer>(std::move(answer));
    turn.tell([this, ask, shared, signal] { emit(this->*signal)(ask, shared); });
}

void Assessor::answerQuickly(const Ask& ask, const NewestWins::Turn& turn)
{
    if (!lastQuick_ || !sameLoads(*lastQuick_, ask)) {
        deliver(turn, ask, works_.quick(ask), &Assessor::quickReady);
        lastQuick_ = ask;
    }
}

void Assessor::castShadows(const Ask& ask, const NewestWins::Turn& turn)
{
    if (!lastShadow_ || !sameShadow(*lastShadow_, ask)) {
        deliver(turn, ask, works_.shadow(ask), &Assessor::shadowReady);
        lastShadow_ = ask;
    }
}

void Assessor::answerFully(const Ask& ask, const NewestWins::Turn& turn)
{
    if (lastFull_ && sameLoads(*lastFull_, ask))
        return;
    auto assessment = works_.full(ask, turn.cancel());
    if (turn.cancel())
        return;
    deliver(turn, ask, std::move(assessment), &Assessor::fullReady);
    lastFull_ = ask;
}

} // namespace app
