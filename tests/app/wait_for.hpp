#pragma once

#include <QCoreApplication>
#include <QElapsedTimer>

#include <algorithm>
#include <functional>

namespace app {

/// How many times longer than in an ordinary build things may take: more than once in the watched
/// builds, which are slower (UNDERBOUGH_PATIENCE, set by tests/run).
inline int patience()
{
    return std::max(1, qEnvironmentVariableIntValue("UNDERBOUGH_PATIENCE"));
}

/// Runs the event loop until it is so; gives up after a minute of patience. \return whether it is
/// so
inline bool waitFor(const std::function<bool()>& done)
{
    QElapsedTimer timer;
    timer.start();
    while (!done() && timer.elapsed() < 60'000 * patience())
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
    return done();
}

} // namespace app
