#include "tests/qml/test_pages.hpp"

#include "app/tables/tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/store/picture_files.hpp"

#include <QCoreApplication>
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QQuickWindow>

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

} // namespace

TestPages::TestPages(QObject* parent)
    : QObject(parent),
      pages_(tables(), app::Units(QLocale(QLocale::English), app::Measures::metric),
             app::modelWorks(tables()), std::chrono::year(2025) / 7 / 3, app::builtInExamples())
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
