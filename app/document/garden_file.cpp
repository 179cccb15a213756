#include "app/document/garden_file.hpp"

#include "model/document/garden_json.hpp"
#include "model/document/validate.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

namespace app {
namespace {

// Beyond any garden document; the reader has its own, exact limit.
constexpr qint64 kMostBytes = 64LL * 1024 * 1024;

QString say(const char* sentence)
{
    return QCoreApplication::translate("GardenFile", sentence);
}

QString shown(const QString& path)
{
    return QDir::toNativeSeparators(path);
}

QString faultSentence(const QString& path, const std::vector<model::Fault>& faults)
{
    const auto first = QString::fromStdString(model::oneLine(faults.front()));
    if (faults.size() == 1)
        return say("%1 can't be used. %2.").arg(shown(path), first);
    return QCoreApplication::translate("GardenFile", "%1 can't be used. %2, and %n more.", nullptr,
                                       static_cast<int>(faults.size()) - 1)
        .arg(shown(path), first);
}

} // namespace

GardenFile readGardenFile(const QString& path, const model::Tables& tables)
{
    QFile file(path);
    if (QFileInfo(path).isDir())
        return {{}, say("%1 is a folder. Choose a garden file in it.").arg(shown(path))};
    if (!file.open(QIODevice::ReadOnly))
        return {{}, say("%1 can't be opened: %2.").arg(shown(path), file.errorString())};
    if (file.size() > kMostBytes)
        return {{},
                say("%1 is too large to be a garden file (%2 MB).")
                    .arg(shown(path))
                    .arg(file.size() / 1'000'000)};
    const QByteArray text = file.readAll();
    if (file.error() != QFileDevice::NoError)
        return {{}, say("%1 can't be read: %2.").arg(shown(path), file.errorString())};

    auto reading = model::readGarden({text.constData(), static_cast<std::size_t>(text.size())});
    if (!reading.garden)
        return {{}, faultSentence(path, reading.faults)};
    const auto unknown = model::unknownNames(*reading.garden, tables);
    if (!unknown.empty())
        return {{}, faultSentence(path, unknown)};
    return {std::move(reading.garden), {}};
}

QString writeGardenFile(const QString& path, const model::Garden& garden)
{
    const std::string text = model::writeGarden(garden);
    QSaveFile file(path);
    const auto failure = [&] {
        return say("%1 was not saved: %2. Your garden is still here; save it under another name.")
            .arg(shown(path), file.errorString());
    };
    if (!file.open(QIODevice::WriteOnly))
        return failure();
    if (file.write(text.data(), static_cast<qint64>(text.size())) !=
        static_cast<qint64>(text.size()))
        return failure();
    return file.commit() ? QString() : failure();
}

} // namespace app
