#include "app/window/window.hpp"

#include "app/language/language.hpp"
#include "app/window/pages.hpp"
#include "app/window/state_output.hpp"

#include <QDate>
#include <QFile>
#include <QFont>
#include <QGuiApplication>
#include <QPalette>
#include <QQmlApplicationEngine>
#include <QQmlProperty>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QScreen>
#include <QSettings>
#include <QTimer>

#include <algorithm>

namespace app {
namespace {

constexpr auto kLastGarden = "lastGarden";
constexpr auto kGeometry = "windowGeometry";
constexpr auto kDark = "dark";
constexpr auto kLanguage = "language";
constexpr auto kMeasures = "measures"; // only once somebody chose other than the locale's
constexpr auto kStateFile = "UNDERBOUGH_STATE_FILE"; // see state_output.hpp

std::chrono::year_month_day today()
{
    const QDate date = QDate::currentDate();
    return std::chrono::year(date.year()) / date.month() / date.day();
}

void nameProgram()
{
    QCoreApplication::setOrganizationName(QStringLiteral("Underbough"));
    QCoreApplication::setApplicationName(QStringLiteral("Underbough"));
    QFont font = QGuiApplication::font();
    font.setFamilies(QStringList{QStringLiteral("Inter")} + font.families());
    QGuiApplication::setFont(font);
}

/// The garden asked for, or the last one; an example when there is none or it can't be opened.
void openFirst(Pages& pages, const QString& asked)
{
    const QString last = QSettings().value(QLatin1String(kLastGarden)).toString();
    const QString path = !asked.isEmpty() || !QFile::exists(last) ? asked : last;
    if (path.isEmpty()) {
        pages.garden.openExample(0);
        return;
    }
    if (pages.garden.open(QUrl::fromLocalFile(path)))
        return;
    const QString problem = pages.garden.problem();
    pages.garden.openExample(0);
    pages.workspace.say(problem);
}

/// The language asked for is kept for the times when none is.
void speakAsAsked(const QString& language)
{
    QSettings settings;
    if (!language.isEmpty())
        settings.setValue(QLatin1String(kLanguage), language);
    speak(localeOf(settings.value(QLatin1String(kLanguage)).toString()));
}

bool isDarkAtFirst()
{
    const bool desktop = QGuiApplication::palette().color(QPalette::Window).lightness() < 128;
    return QSettings().value(QLatin1String(kDark), desktop).toBool();
}

/// As asked for, or chosen last time, or usual where the system's language is spoken.
Units unitsAtFirst(const std::optional<Measures>& asked)
{
    const QLocale locale;
    if (asked)
        return {locale, *asked};
    const QVariant last = QSettings().value(QLatin1String(kMeasures));
    const int most = static_cast<int>(Measures::unitedStates);
    bool isNumber = false;
    const int measures = last.toInt(&isNumber);
    return isNumber && measures >= 0 && measures <= most
               ? Units(locale, static_cast<Measures>(measures))
               : Units(locale);
}

void remember(const Pages& pages, const QQuickWindow& window)
{
    QSettings settings;
    settings.setValue(QLatin1String(kLastGarden), pages.workspace.document().path());
    settings.setValue(QLatin1String(kGeometry), window.geometry());
    settings.setValue(QLatin1String(kDark), window.property("dark"));
    if (const QString language = window.property("language").toString(); language.isEmpty())
        settings.remove(QLatin1String(kLanguage));
    else
        settings.setValue(QLatin1String(kLanguage), language);
    const auto& units = pages.workspace.units();
    if (units.measures() == Units(units.locale()).measures())
        settings.remove(QLatin1String(kMeasures));
    else
        settings.setValue(QLatin1String(kMeasures), static_cast<int>(units.measures()));
}

/// Where it was, but within the screen: that may be a smaller one now, or be scaled otherwise.
void restore(QQuickWindow& window)
{
    auto geometry = QSettings().value(QLatin1String(kGeometry)).toRect();
    const QRect room = window.screen()->availableVirtualGeometry();
    if (!geometry.isValid()) { // the first time
        window.resize(window.size().boundedTo(room.size()));
        return;
    }
    geometry.setSize(geometry.size().boundedTo(room.size()));
    geometry.moveLeft(
        std::clamp(geometry.left(), room.left(), room.right() + 1 - geometry.width()));
    geometry.moveTop(std::clamp(geometry.top(), room.top(), room.bottom() + 1 - geometry.height()));
    window.setGeometry(geometry);
}

} // namespace

bool hasDisplay()
{
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

int runWindow(int& argc, char** argv, const model::Tables& tables, const WindowStart& start)
{
    QGuiApplication application(argc, argv);
    nameProgram();
    speakAsAsked(start.language);
    QQuickStyle::setStyle(QStringLiteral("Basic"));

    Pages pages(tables, unitsAtFirst(start.measures), modelWorks(tables), today(),
                builtInExamples());

    QQmlApplicationEngine engine;
    engine.addImportPath(qmlImportPath());
    auto properties = pages.properties();
    properties.insert(QStringLiteral("dark"), isDarkAtFirst());
    properties.insert(
        QStringLiteral("language"),
        QSettings().value(QLatin1String(kLanguage)).toString()); // empty where none was chosen
    properties.insert(QStringLiteral("firstTime"),
                      start.garden.isEmpty() && !QSettings().contains(QLatin1String(kGeometry)));
    properties.insert(QStringLiteral("languageCodes"), languages());
    properties.insert(QStringLiteral("languageNames"), languageNames());
    engine.setInitialProperties(properties);
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Underbough/Ui/Main.qml")));
    if (engine.rootObjects().isEmpty())
        return 1;
    auto& window = *qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    restore(window);
    openFirst(pages, start.garden);
    window.show();
    // At once, not only at the end: a session may end without the window's being closed.
    QTimer changed;
    changed.setSingleShot(true);
    QObject::connect(&changed, &QTimer::timeout, &window, [&] { remember(pages, window); });
    for (const char* choice : {"dark", "language", "title"})
        QQmlProperty(&window, QLatin1String(choice)).connectNotifySignal(&changed, SLOT(start()));
    std::optional<StateOutput> output;
    if (qEnvironmentVariableIsSet(kStateFile))
        output.emplace(window, qEnvironmentVariable(kStateFile));
    const int status = QGuiApplication::exec();
    remember(pages, window);
    return status;
}

} // namespace app
