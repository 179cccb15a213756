#pragma once

#include <QColor>
#include <QList>

namespace app {

/// The colours that the drawings are made with.
struct DrawingPalette {
    QColor paper, ink, faintInk;
    QColor soil, leaf, bark;
    QColor planting, strip, structure, line;
    QColor enough, shortOf, cut, chosen;
    QColor shadow, sun;
    QList<QColor> loads; ///< one for each of kLoadSteps, lightest load first
};

} // namespace app
