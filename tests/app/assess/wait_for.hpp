#pragma once

#include <QCoreApplication>
#include <QElapsedTimer>

#include <functional>

namespace app {

/// Runs the event loop until it is so; gives up after 20 s. \return whether it is so
inline bool waitFor(const std::function<bool()>& done)
{
    QElapsedTimer timer;
    timer.start();
    while (!done() && timer.elapsed() < 20'000)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
    return done();
}

} // namespace app
