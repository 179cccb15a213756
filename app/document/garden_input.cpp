#include "app/document/garden_input.hpp"

#include "app/store/garden_store.hpp"
#include "model/document/garden_json.hpp"
#include "model/document/limits.hpp"
#include "model/document/validate.hpp"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryFile>

namespace app {
namespace {

using model::Fault;

constexpr const char* kExpectedFile = "a garden file, as docs/garden.schema.json describes it";

/// A text, or why there is none.
struct Text {
    std::string text;
    std::optional<Fault> fault;
};

Fault tooLarge()
{
    return {{},
            "more than " + std::to_string(model::limits::kDocumentBytes / (1024U * 1024U)) + " MB",
            "a garden file, which is far smaller"};
}

Text fromStream(std::istream& stream)
{
    std::string text;
    std::vector<char> piece(64U * 1024U);
    while (text.size() <= model::limits::kDocumentBytes) {
        stream.read(piece.data(), static_cast<std::streamsize>(piece.size()));
        if (stream.gcount() == 0)
            return {std::move(text), {}};
        text.append(piece.data(), static_cast<std::size_t>(stream.gcount()));
    }
    return {{}, tooLarge()};
}

Text fromFile(const QString& path)
{
    const QFileInfo info(path);
    if (!info.exists())
        return {{}, Fault{{}, "no file of that name", kExpectedFile}};
    if (info.isDir())
        return {{}, Fault{{}, "a folder", kExpectedFile}};
    constexpr qint64 most = model::limits::kDocumentBytes;
    if (info.size() > most)
        return {{}, tooLarge()};
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return {{}, Fault{{}, "a file that can't be opened", "one that you may read"}};
    // The size may lie (a device) or grow while it is read.
    const QByteArray bytes = file.read(most + 1);
    if (file.error() != QFileDevice::NoError)
        return {{}, Fault{{}, "a file that can't be read", "one that you may read"}};
    if (bytes.size() > most)
        return {{}, tooLarge()};
    return {bytes.toStdString(), {}};
}

/// What a garden file holds, or what is wrong with it.
model::GardenReading fromStore(const QString& path)
{
    try {
        return {loadGarden(path).garden, {}};
    } catch (const StoreError& error) {
        return {std::nullopt, error.faults()};
    }
}

/// A garden file that came through a pipe needs a place on the disk to be read from.
model::GardenReading fromPipedStore(const std::string& bytes)
{
    QTemporaryFile file;
    if (!file.open() || file.write(bytes.data(), static_cast<qint64>(bytes.size())) < 0 ||
        !file.flush())
        return {std::nullopt, {{{}, "no room for a temporary file", "some"}}};
    return fromStore(file.fileName());
}

model::GardenReading readEither(const std::string& path, bool piped, std::istream& standardInput)
{
    const QString file = QString::fromStdString(path);
    if (!piped && isGardenStore(file))
        return fromStore(file);
    const Text text = piped ? fromStream(standardInput) : fromFile(file);
    if (text.fault)
        return {std::nullopt, {*text.fault}};
    return piped && isStoreText(text.text) ? fromPipedStore(text.text)
                                           : model::readGarden(text.text);
}

} // namespace

GardenInput readGardenInput(const std::string& path, const model::Tables& tables,
                            std::istream& standardInput)
{
    const bool piped = path == "-";
    GardenInput input{.name = piped ? "standard input" : path, .garden = {}, .faults = {}};
    auto reading = readEither(path, piped, standardInput);
    input.faults = std::move(reading.faults);
    if (reading.garden)
        input.faults = model::unknownNames(*reading.garden, tables);
    if (input.faults.empty())
        input.garden = std::move(reading.garden);
    return input;
}

} // namespace app
