#include "app/store/garden_store.hpp"

#include "app/store/new_file.hpp"
#include "app/store/photo_rows.hpp"
#include "app/store/rows.hpp"
#include "app/store/schema.hpp"

#include <QFile>
#include <QFileInfo>
#include <QUuid>

namespace app {
namespace {

using Kind = StoreError::Kind;
using Mode = Connection::Mode;

constexpr const char* kMagic = "SQLite format 3"; // with the zero byte after it; fileformat2.html
constexpr qint64 kMagicBytes = 16;

void holdPages(Connection& connection)
{
    for (const char* table : {"head", "part", "step", "step_part"}) {
        Statement check(connection,
                        QStringLiteral("PRAGMA quick_check(%1)").arg(QLatin1String(table)));
        check.run();
        if (check.next() && check.text(0) != "ok")
            throw StoreError(Kind::damaged, "damage (" + check.text(0) + ")",
                             "a garden file as it was written; \"underbough recover\" saves what "
                             "can be read");
    }
}

StepHistory readHistory(Connection& connection, const Head& head)
{
    StepHistory history{readSteps(connection), head.done};
    const bool known = head.done == 0 || std::ranges::any_of(history.steps, [&](const Step& step) {
                           return step.number == head.done;
                       });
    if (!known)
        throw StoreError(Kind::damaged, "a history without its step " + std::to_string(head.done),
                         "a garden file as it was written; \"underbough recover\" saves what can "
                         "be read");
    return history;
}

void fill(Connection& connection, const Head& start, const model::Garden& garden,
          const StepHistory& history)
{
    GardenChange change;
    for (auto& [key, part] : partsOf(garden))
        change.push_back({key, std::nullopt, part});
    Head head = start;
    head.partsSum = writeParts(connection, 0, change);
    head.done = history.done;
    for (const Step& step : history.steps)
        writeStep(connection, step);
    writeHead(connection, head);
}

} // namespace

bool isGardenStore(const QString& path)
{
    QFile file(path);
    return QFileInfo(path).isFile() && file.open(QIODevice::ReadOnly) &&
           isStoreText(file.read(kMagicBytes).toStdString());
}

bool isStoreText(std::string_view bytes)
{
    return bytes.starts_with(std::string_view(kMagic, kMagicBytes));
}

Edition editionOf(const QString& path)
{
    Connection connection(path, Mode::read);
    return readHead(connection, storeVersion(connection)).edition;
}

StoredGarden loadGarden(const QString& path)
{
    Connection connection(path, Mode::read);
    connection.run(QStringLiteral("BEGIN")); // all of it at one moment; ends with the connection
    StoredGarden stored;
    stored.version = storeVersion(connection);
    if (stored.version == kStoreVersion)
        holdPages(connection);
    const Head head = readHead(connection, stored.version);
    auto reading = gardenOf(readParts(connection, head));
    if (!reading.garden)
        throw StoreError(Kind::unfit, std::move(reading.faults));
    stored.garden = std::move(*reading.garden);
    stored.edition = head.edition;
    if (stored.version == kStoreVersion)
        stored.history = readHistory(connection, head);
    return stored;
}

Edition writeGardenStore(const QString& path, const model::Garden& garden,
                         const StepHistory& history, const std::vector<std::string>& names,
                         const FetchPhoto& fetch)
{
    const Edition edition{QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString(), 1};
    NewFile file(path);
    {
        Connection connection(file.path(), Mode::create);
        Transaction transaction(connection);
        raiseSchema(connection, 0);
        fill(connection, {edition, 0, 0}, garden, history);
        for (const auto& name : names)
            if (const QByteArray bytes = fetch(name); !bytes.isNull())
                writePhoto(connection, name, bytes);
        transaction.commit();
    }
    file.takePlace();
    return edition;
}

Edition recordEdit(const QString& path, const Edition& expected, const Record& record)
{
    Connection connection(path, Mode::write);
    Transaction transaction(connection);
    if (storeVersion(connection) != kStoreVersion)
        throw StoreError(Kind::changed, "a garden file of another version", "the one opened");
    Head head = readHead(connection, kStoreVersion);
    if (head.edition != expected)
        throw StoreError(Kind::changed, "a garden that another program changed",
                         "the one that was opened");
    head.partsSum = writeParts(connection, head.partsSum, record.change);
    for (const auto number : record.dropped)
        dropStep(connection, number);
    for (const Step& step : record.written)
        writeStep(connection, step);
    for (const auto& [name, bytes] : record.photos)
        writePhoto(connection, name, bytes);
    head.done = record.done;
    ++head.edition.count;
    writeHead(connection, head);
    transaction.commit();
    return head.edition;
}

} // namespace app
