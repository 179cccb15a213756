#include "tests/qml/test_pages.hpp"

#include <QQmlEngine>
#include <QQuickStyle>
#include <QtQuickTest>

/// Lets the tests import the modules that are built in, and the test's own garden.
class Setup : public QObject {
    Q_OBJECT

public slots:
    void applicationAvailable() { QQuickStyle::setStyle(QStringLiteral("Basic")); }
    void qmlEngineAvailable(QQmlEngine* engine)
    {
        engine->addImportPath(app::qmlImportPath());
        qmlRegisterType<TestPages>("Underbough.Test", 1, 0, "TestPages");
    }
};

QUICK_TEST_MAIN_WITH_SETUP(window, Setup)

#include "main.moc"
