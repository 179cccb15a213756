#pragma once

#include <QQuickWindow>
#include <QString>
#include <QTimer>

namespace app {

/// Writes what a window shows into a file, for tests that drive the real program from outside: as
/// JSON, every visible item that has a name, every fact and every cut, with its place in the window
/// and what it reads. Only on demand (window.cpp): nothing runs otherwise.
class StateOutput final : public QObject {
    Q_OBJECT

public:
    StateOutput(QQuickWindow& window, QString file, QObject* parent = nullptr);

private:
    void write();

    QQuickWindow& window_;
    QString file_;
    QByteArray last_;
    QTimer timer_;
};

} // namespace app
