#include "app/command/application.hpp"

#include "app/words/translation.hpp"

#include <QGuiApplication>

#include <clocale>

namespace app {

Application::Application(For purpose)
{
    if (QCoreApplication::instance())
        return;
    translation_ = translationFor(QLocale());
    if (purpose == For::drawings) {
        if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
        // What Qt has to say of the desktop is nothing to who prints.
        qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
        application_ = std::make_unique<QGuiApplication>(count_, arguments_.data());
    } else if (translation_) {
        application_ = std::make_unique<QCoreApplication>(count_, arguments_.data());
    }
    // Qt takes on the person's locale; numbers for programs keep their point.
    std::setlocale(LC_NUMERIC, "C");
    if (translation_)
        QCoreApplication::installTranslator(translation_.get());
}

Application::~Application()
{
    if (application_)
        qInstallMessageHandler(nullptr);
}

} // namespace app
