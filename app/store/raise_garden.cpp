#include "app/store/garden_store.hpp"
#include "app/store/new_file.hpp"
#include "app/store/photo_rows.hpp"
#include "app/store/rows.hpp"
#include "app/store/schema.hpp"

#include <QDir>
#include <QFileInfo>

namespace app {
namespace {

/// "garden, version 1.underbough" beside the garden, or with a number when that is taken.
QString copyName(const QString& path, int version)
{
    const QFileInfo file(path);
    for (int number = 1;; ++number) {
        const QString tail = number == 1 ? QString() : QStringLiteral(" (%1)").arg(number);
        const QString name = file.dir().filePath(QStringLiteral("%1, version %2%3.%4")
                                                     .arg(file.completeBaseName())
                                                     .arg(version)
                                                     .arg(tail, file.suffix()));
        if (!QFileInfo::exists(name))
            return name;
    }
}

} // namespace

QString raiseGarden(const QString& path)
{
    Connection connection(path, Connection::Mode::write);
    Transaction transaction(connection); // nobody writes between the copy and the raising
    const int version = storeVersion(connection);
    if (version == kStoreVersion)
        return {};
    const QString copy = copyName(path, version);
    copyFile(path, copy);
    raiseSchema(connection, version);
    addThumbnails(connection);
    writeHead(connection, readHead(connection, kStoreVersion));
    transaction.commit();
    return copy;
}

} // namespace app
