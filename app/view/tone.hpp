#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace app {

/// How much a fact wants the gardener's eye.
namespace Tone {
Q_NAMESPACE
QML_ELEMENT

enum Value {
    Plain, ///< a figure, no more
    Good,  ///< a goal is met
    Mind,  ///< look at it
    Grave, ///< a goal is missed, or somebody could be hurt
};
Q_ENUM_NS(Value)
} // namespace Tone

} // namespace app
