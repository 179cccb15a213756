#include "app/store/new_file.hpp"

#include "app/store/store_error.hpp"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QUuid>

#include <filesystem>

#ifdef Q_OS_UNIX
#include <fcntl.h>
#include <unistd.h>
#endif

namespace app {
namespace {

using Kind = StoreError::Kind;

constexpr qint64 kPiece = 1024 * 1024;

StoreError cannotWrite(const std::string& said)
{
    return {Kind::failed, "a file that can't be written (" + said + ")", "one that you may write"};
}

/// A new name is safe only when its folder is on the disk too.
void syncFolder([[maybe_unused]] const QString& folder)
{
#ifdef Q_OS_UNIX
    const int handle = ::open(QFile::encodeName(folder).constData(), O_RDONLY | O_CLOEXEC);
    if (handle < 0)
        return;
    ::fsync(handle);
    ::close(handle);
#endif
}

std::filesystem::path native(const QString& path)
{
    return std::filesystem::path(path.toStdU16String());
}

} // namespace

NewFile::NewFile(const QString& place)
    : place_(QFileInfo(place).absoluteFilePath()),
      path_(place_ + QLatin1Char('.') + QUuid::createUuid().toString(QUuid::Id128).left(8) +
            QStringLiteral(".new"))
{
    const QFileInfo folder(QFileInfo(place_).absolutePath());
    if (!folder.isDir())
        throw StoreError(Kind::missing, "no folder of that name", "a folder to write it into");
}

NewFile::~NewFile()
{
    for (const auto* rest : {"", "-journal"})
        QFile::remove(path_ + QLatin1String(rest));
}

void NewFile::takePlace()
{
    std::error_code error;
    std::filesystem::rename(native(path_), native(place_), error);
    if (error)
        throw cannotWrite(error.message());
    syncFolder(QFileInfo(place_).absolutePath());
}

void copyFile(const QString& from, const QString& to)
{
    QFile source(from);
    QSaveFile target(to);
    if (!source.open(QIODevice::ReadOnly) || !target.open(QIODevice::WriteOnly))
        throw cannotWrite(target.errorString().toStdString());
    while (!source.atEnd()) {
        const QByteArray piece = source.read(kPiece);
        if (piece.isEmpty())
            throw StoreError(Kind::failed, "a file that can't be read", "one that you may read");
        if (target.write(piece) != piece.size())
            throw cannotWrite(target.errorString().toStdString());
    }
    if (!target.commit())
        throw cannotWrite(target.errorString().toStdString());
    syncFolder(QFileInfo(to).absolutePath());
}

} // namespace app
