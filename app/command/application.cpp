#include "app/command/application.hpp"

#include "app/language/language.hpp"

#include <QGuiApplication>

namespace app {

Application::Application(For purpose, const QLocale& locale)
{
    const bool made = QCoreApplication::instance() != nullptr;
    if (!made && purpose == For::drawings) {
        if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
        // What Qt has to say of the desktop is nothing to who prints.
        qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
        application_ = std::make_unique<QGuiApplication>(count_, arguments_.data());
    } else if (!made && isTranslated(locale)) {
        application_ = std::make_unique<QCoreApplication>(count_, arguments_.data());
    }
    speak(locale);
}

Application::~Application()
{
    if (application_)
        qInstallMessageHandler(nullptr);
}

} // namespace app
