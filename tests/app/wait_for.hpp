#pragma once

#include <QCoreApplication>
#include <QElapsedTimer>

#include <algorithm>
#include <functional>

namespace app {

/// Runs the event loop until it is so; gives up after a minute, in the watched builds, which are
/// slower, after UNDERBOUGH_PATIENCE of them. \return whether it is so
inline bool waitFor(const std::function<bool()>& done)
{
    const int minutes = std::max(1, qEnvironmentVariableIntValue("UNDERBOUGH_PATIENCE"));
    QElapsedTimer timer;
    timer.start();
    while (!done() && timer.elapsed() < 60'000 * minutes)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
    return done();
}

} // namespace app
