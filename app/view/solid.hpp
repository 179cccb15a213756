#pragma once

#include "app/solid/mesh.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace app {

/// A mesh on its way through QML to what draws it.
struct Solid {
    Q_GADGET
    QML_VALUE_TYPE(solid)

public:
    std::shared_ptr<const Mesh> mesh; ///< null: nothing
    friend bool operator==(const Solid&, const Solid&) = default;
};

} // namespace app
