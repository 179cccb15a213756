#include "tests/qml/test_pages.hpp"

#include "app/tables/tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/store/picture_files.hpp"

#include <QCoreApplication>
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QMouseEvent>
#include <QPointingDevice>
#include <QQuickWindow>
#include <QTabletEvent>

#include <thread>

namespace {

const model::Tables& tables()
{
    static const model::Tables kTables = app::loadTables();
    return kTables;
}

const model::Limb& limbOf(const app::Workspace& workspace, const QString& id)
{
    const auto& tree = *workspace.tree();
    return tree.limbs.at(model::limbIndex(tree, id.toStdString()));
}

/// The model's own, which wait before they search.
app::Works heldWorks(const std::atomic<bool>& holds)
{
    auto works = app::modelWorks(tables());
    works.full = [full = works.full, &holds](const app::Ask& ask, const std::atomic<bool>& cancel) {
        while (holds && !cancel)
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        return full(ask, cancel);
    };
    return works;
}

void send(QQuickWindow& window, QEvent::Type pen, QEvent::Type mouse, QPointF at)
{
    static const QPointingDevice device(
        QStringLiteral("pen"), 17, QInputDevice::DeviceType::Stylus,
        QPointingDevice::PointerType::Pen,
        QInputDevice::Capability::Position | QInputDevice::Capability::Pressure, 1, 1);
    const QPointF global = window.mapToGlobal(at);
    const bool isUp = mouse == QEvent::MouseButtonRelease;
    const auto button = mouse == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
    const auto buttons = isUp ? Qt::NoButton : Qt::LeftButton;
    QTabletEvent tablet(pen, &device, at, global, isUp ? 0.0 : 0.5, 0, 0, 0, 0, 0, Qt::NoModifier,
                        button, buttons);
    tablet.ignore();
    QCoreApplication::sendEvent(&window, &tablet);
    if (tablet.isAccepted())
        return;
    QMouseEvent event(mouse, at, global, button, buttons, Qt::NoModifier, &device);
    QCoreApplication::sendEvent(&window, &event);
}

} // namespace

TestPages::TestPages(QObject* parent)
    : QObject(parent),
      pages_(tables(), app::Units(QLocale(QLocale::English), app::Measures::metric),
             heldWorks(holdsSearch_), std::chrono::year(2025) / 7 / 3, app::builtInExamples())
{
    restart();
}

void TestPages::restart()
{
    pages_.workspace.document().start(app::smallGarden());
}

QUrl TestPages::file(const QString& name) const
{
    return QUrl::fromLocalFile(folder_.filePath(name));
}

QPointF TestPages::station(const QString& limb, int station) const
{
    const auto* handles = const_cast<TestPages*>(this)->pages_.side.handles();
    for (int row = 0; row < handles->rowCount(); ++row) {
        const auto index = handles->index(row);
        if (handles->data(index, app::HandleModel::LimbId) == limb &&
            handles->data(index, app::HandleModel::Station) == station)
            return {handles->data(index, app::HandleModel::X).toDouble(),
                    handles->data(index, app::HandleModel::Y).toDouble()};
    }
    return {-1.0, -1.0};
}

QUrl TestPages::picture(const QString& name) const
{
    QFile picture(folder_.filePath(name));
    if (picture.open(QIODevice::WriteOnly))
        picture.write(app::test::jpeg(400, 300, 6));
    return file(name);
}

bool TestPages::drop(QQuickItem* onto, const QUrl& file) const
{
    QMimeData files;
    files.setUrls({file});
    const QPointF at = onto->mapToScene({onto->width() / 2.0, onto->height() / 2.0});
    QDragEnterEvent enter(at.toPoint(), Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(onto->window(), &enter);
    QDragMoveEvent move(at.toPoint(), Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(onto->window(), &move);
    QDropEvent drop(at, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(onto->window(), &drop);
    return drop.isAccepted();
}

void TestPages::setHoldsSearch(bool holds)
{
    holdsSearch_ = holds;
    emit holdsSearchChanged();
}

void TestPages::pen(QQuickItem* over, const QList<QPointF>& places) const
{
    auto& window = *over->window();
    for (qsizetype i = 0; i < places.size(); ++i)
        send(window, i == 0 ? QEvent::TabletPress : QEvent::TabletMove,
             i == 0 ? QEvent::MouseButtonPress : QEvent::MouseMove, over->mapToScene(places[i]));
    send(window, QEvent::TabletRelease, QEvent::MouseButtonRelease,
         over->mapToScene(places.back()));
}

double TestPages::diameter_m(const QString& limb, int station) const
{
    return limbOf(pages_.workspace, limb).stations.at(static_cast<std::size_t>(station)).diameter_m;
}

double TestPages::utilisation(const QString& limb) const
{
    const auto* load = pages_.workspace.load(limb.toStdString());
    return load ? load->utilisation : -1.0;
}

int TestPages::limbCount() const
{
    return static_cast<int>(pages_.workspace.tree()->limbs.size());
}

double TestPages::height_m(const QString& limb, int station) const
{
    return limbOf(pages_.workspace, limb)
        .stations.at(static_cast<std::size_t>(station))
        .position_m.z;
}
