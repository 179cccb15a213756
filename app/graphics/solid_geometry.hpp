#pragma once

#include "app/view/solid.hpp"

#include <QtQuick3D/QQuick3DGeometry>

namespace app {

/// A mesh as Quick 3D draws it. The garden's frame, z up, becomes the scene's: x east, y up,
/// z south, metres.
class SolidGeometry : public QQuick3DGeometry {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(app::Solid solid READ solid WRITE setSolid NOTIFY solidChanged FINAL)

public:
    using QQuick3DGeometry::QQuick3DGeometry;

    [[nodiscard]] const Solid& solid() const { return solid_; }
    void setSolid(const Solid& solid);

signals:
    void solidChanged();

private:
    Solid solid_;
};

} // namespace app
