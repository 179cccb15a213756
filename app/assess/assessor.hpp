#pragma once

#include "app/assess/answers.hpp"
#include "app/assess/newest_wins.hpp"

#include <QObject>

#include <chrono>
#include <optional>

Q_MOC_INCLUDE("app/assess/answers.hpp")

namespace app {

/// Assesses on threads of its own, so that the window never waits. The newest ask wins: quick
/// answers come at once, the full assessment once nothing new has been asked for `settle`, and an
/// ask that comes meanwhile stops a full assessment that is under way. Shadows are reckoned beside
/// them, so that the loads never wait for those.
class Assessor final : public QObject {
    Q_OBJECT

public:
    explicit Assessor(Works works,
                      std::chrono::milliseconds settle = std::chrono::milliseconds(160),
                      QObject* parent = nullptr);

    void ask(Ask ask);
    /// Gives up the full assessment that is under way or about to be. What answers under the hand
    /// comes all the same, and the next ask is answered in full again.
    void stop();
    /// True from an ask until its shadows and its full assessment are there.
    [[nodiscard]] bool isBusy() const { return isAssessing() || shadowWorker_.isBusy(); }
    /// The same without the shadows.
    [[nodiscard]] bool isAssessing() const { return worker_.isBusy(); }

signals:
    /// All three arrive in the thread that the assessor lives in, with the ask they answer.
    void quickReady(const app::Ask& ask, const std::shared_ptr<const app::QuickAnswer>& answer);
    void shadowReady(const app::Ask& ask, const std::shared_ptr<const app::ShadowAnswer>& answer);
    void fullReady(const app::Ask& ask, const std::shared_ptr<const model::Assessment>& assessment);
    /// The model refused the garden; a sentence fit to show.
    void failed(const QString& problem);
    void busyChanged();

private:
    void answerQuickly(const Ask& ask, const NewestWins::Turn& turn);
    void castShadows(const Ask& ask, const NewestWins::Turn& turn);
    void answerFully(const Ask& ask, const NewestWins::Turn& turn);
    template <typename Answer, typename Signal>
    void deliver(const NewestWins::Turn& turn, const Ask& ask, Answer answer, Signal signal);

    Works works_;
    std::optional<Ask> asked_;      ///< last
    std::optional<Ask> lastQuick_;  ///< of the worker alone
    std::optional<Ask> lastShadow_; ///< of the shadows' worker alone
    std::optional<Ask> lastFull_;   ///< of the worker alone
    NewestWins worker_;
    NewestWins shadowWorker_;
};

} // namespace app
