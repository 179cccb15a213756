#pragma once

#include "app/drawing/drawing_palette.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace app {

/// The palette of the drawings as the theme fills it in.
class DrawingColours : public QObject, public DrawingPalette {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QColor paper MEMBER paper NOTIFY changed FINAL)
    Q_PROPERTY(QColor ink MEMBER ink NOTIFY changed FINAL)
    Q_PROPERTY(QColor faintInk MEMBER faintInk NOTIFY changed FINAL)
    Q_PROPERTY(QColor soil MEMBER soil NOTIFY changed FINAL)
    Q_PROPERTY(QColor leaf MEMBER leaf NOTIFY changed FINAL)
    Q_PROPERTY(QColor bark MEMBER bark NOTIFY changed FINAL)
    Q_PROPERTY(QColor planting MEMBER planting NOTIFY changed FINAL)
    Q_PROPERTY(QColor strip MEMBER strip NOTIFY changed FINAL)
    Q_PROPERTY(QColor structure MEMBER structure NOTIFY changed FINAL)
    Q_PROPERTY(QColor line MEMBER line NOTIFY changed FINAL)
    Q_PROPERTY(QColor enough MEMBER enough NOTIFY changed FINAL)
    Q_PROPERTY(QColor shortOf MEMBER shortOf NOTIFY changed FINAL)
    Q_PROPERTY(QColor cut MEMBER cut NOTIFY changed FINAL)
    Q_PROPERTY(QColor chosen MEMBER chosen NOTIFY changed FINAL)
    Q_PROPERTY(QColor shadow MEMBER shadow NOTIFY changed FINAL)
    Q_PROPERTY(QColor sun MEMBER sun NOTIFY changed FINAL)
    Q_PROPERTY(QList<QColor> loads MEMBER loads NOTIFY changed FINAL)

public:
    using QObject::QObject;

signals:
    void changed();
};

} // namespace app
