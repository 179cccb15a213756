#include "app/document/garden_file.hpp"

#include "app/document/file_sentences.hpp"
#include "app/document/garden_input.hpp"
#include "app/document/photo_files.hpp"
#include "app/store/photo_rows.hpp"
#include "model/document/garden_json.hpp"
#include "model/document/limits.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include <sstream>

namespace app {
namespace {

QString nativePath(const QString& path)
{
    return QDir::toNativeSeparators(path);
}

/// As much as a garden document may hold.
QByteArray startOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.read(model::limits::kDocumentBytes) : QByteArray();
}

} // namespace

GardenFile readGardenFile(const QString& path, const model::Tables& tables)
{
    // The path is made whole, so that a file called "-" is not taken for standard input.
    std::istringstream none;
    auto input = readGardenInput(QFileInfo(path).absoluteFilePath().toStdString(), tables, none);
    if (!input.garden)
        return {{}, notReadSentence(path, input.faults, startOf(path))};
    return {std::move(input.garden), {}};
}

QByteArray readGardenPhoto(const QString& garden, const std::string& name)
{
    if (!isGardenStore(garden))
        return readPhotoFile(garden, name);
    try {
        return loadPhoto(garden, name);
    } catch (const StoreError&) {
        return {};
    }
}

QString writeGardenFile(const QString& path, const model::Garden& garden)
{
    const std::string text = model::writeGarden(garden);
    QSaveFile file(path);
    const auto failure = [&] {
        return QCoreApplication::translate(
                   "GardenFile",
                   "%1 was not saved: %2. Your garden is still here; save it under another name.")
            .arg(nativePath(path), file.errorString());
    };
    if (!file.open(QIODevice::WriteOnly))
        return failure();
    if (file.write(text.data(), static_cast<qint64>(text.size())) !=
        static_cast<qint64>(text.size()))
        return failure();
    return file.commit() ? QString() : failure();
}

} // namespace app
