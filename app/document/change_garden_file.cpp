#include "app/document/change_garden_file.hpp"

#include "app/document/document.hpp"
#include "app/document/garden_file.hpp"
#include "app/document/photo_files.hpp"
#include "app/store/photo_rows.hpp"
#include "app/words/fault_words.hpp"

#include <QCoreApplication>
#include <QFileInfo>

namespace app {
namespace {

QByteArray photoOf(const QString& garden, bool isStore, const std::string& name)
{
    return isStore ? loadPhoto(garden, name) : readPhotoFile(garden, name);
}

QString alreadyThere(const QString& path)
{
    return QCoreApplication::translate(
               "GardenFile", "%1 is there already and was left alone. Choose another name.")
        .arg(path);
}

QString writeExport(const QString& from, const QString& to, const model::Garden& garden,
                    Transfer& transfer)
{
    const bool isStore = isGardenStore(from);
    for (const auto& name : photosOf(garden)) {
        const QByteArray bytes = photoOf(from, isStore, name);
        if (bytes.isNull()) {
            transfer.missing.push_back(name);
            continue;
        }
        if (const QString problem = writePhotoFile(to, name, bytes); !problem.isEmpty())
            return problem;
        ++transfer.photos;
    }
    return writeGardenFile(to, garden);
}

void writeImport(const QString& from, const QString& to, const model::Garden& garden,
                 Transfer& transfer)
{
    const bool isStore = isGardenStore(from);
    writeGardenStore(to, garden, {}, photosOf(garden), [&](const std::string& name) {
        QByteArray bytes = photoOf(from, isStore, name);
        if (bytes.isNull())
            transfer.missing.push_back(name);
        else
            ++transfer.photos;
        return bytes;
    });
}

/// Reads the one and writes the other, unless that is there already.
template <typename Write>
Transfer transferred(const QString& from, const QString& to, const model::Tables& tables,
                     Write write)
{
    Transfer transfer;
    const auto file = readGardenFile(from, tables);
    transfer.problem = file.problem;
    if (file.garden && QFileInfo::exists(to))
        transfer.problem = alreadyThere(to);
    if (!transfer.problem.isEmpty())
        return transfer;
    try {
        write(*file.garden, transfer);
    } catch (const StoreError& error) {
        transfer.problem = QStringLiteral("%1: %2").arg(to, faultLine(error.faults().front()));
    }
    return transfer;
}

} // namespace

QString changeGardenFile(const QString& path, const model::Tables& tables, const QString& step,
                         const std::function<QString(model::Garden&)>& edit,
                         const std::vector<NewPhoto>& photos)
{
    Document document(tables);
    const QString whole = QFileInfo(path).absoluteFilePath(); // as a document calls it
    if (const QString problem = document.open(whole); !problem.isEmpty())
        return problem;
    if (document.path() != whole) // damaged: what could be read of it is in another file now
        return document.fileProblem();
    auto garden = *document.garden();
    if (const QString problem = edit(garden); !problem.isEmpty())
        return problem;
    for (const auto& photo : photos)
        document.addPhoto(photo.name, photo.bytes);
    if (const QString problem = document.change(step, std::move(garden)); !problem.isEmpty())
        return problem;
    return document.isDirty() ? document.save() : QString();
}

Transfer exportGarden(const QString& from, const QString& to, const model::Tables& tables)
{
    return transferred(from, to, tables, [&](const model::Garden& garden, Transfer& transfer) {
        transfer.problem = writeExport(from, to, garden, transfer);
    });
}

Transfer importGarden(const QString& from, const QString& to, const model::Tables& tables)
{
    return transferred(from, to, tables, [&](const model::Garden& garden, Transfer& transfer) {
        writeImport(from, to, garden, transfer);
    });
}

} // namespace app
