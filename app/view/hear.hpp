#pragma once

#include <QObject>

namespace app {

/// Has `listener` hear `next` from now on in the place of `heard`: on each signal of `on`, `call`.
/// Either may be null.
/// \return whether that is anyone else than before
template <typename Heard, typename Listener, typename Call, typename... Signal>
bool hear(Heard*& heard, Heard* next, Listener* listener, const Call& call, Signal... on)
{
    if (next == heard)
        return false;
    if (heard)
        QObject::disconnect(heard, nullptr, listener, nullptr);
    heard = next;
    if (heard)
        (QObject::connect(heard, on, listener, call), ...);
    return true;
}

} // namespace app
