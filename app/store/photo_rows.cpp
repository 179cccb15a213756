#include "app/store/photo_rows.hpp"

#include "app/store/checksum.hpp"
#include "app/store/connection.hpp"
#include "app/store/picture.hpp"
#include "app/store/schema.hpp"

#include <QBuffer>
#include <QImage>

namespace app {
namespace {

constexpr int kThumbnailQuality = 80; // of 100; a hint of the picture, not the picture

} // namespace

QByteArray smallPhoto(const QByteArray& bytes)
{
    const QImage small = pictureOf(bytes, kThumbnail_px);
    QByteArray jpeg;
    QBuffer out(&jpeg);
    if (!small.isNull() && out.open(QIODevice::WriteOnly))
        small.save(&out, "JPEG", kThumbnailQuality);
    return jpeg;
}

QByteArray readPhoto(Connection& connection, const std::string& name)
{
    Statement statement(connection, QStringLiteral("SELECT bytes, crc FROM photo WHERE name = ?"));
    statement.bind(name).run();
    if (!statement.next())
        return {};
    QByteArray bytes = statement.bytes(0);
    if (Checksum().add(name).add(bytes).value() != statement.number(1))
        throw StoreError(StoreError::Kind::damaged, "damage in the photo " + model::inQuotes(name),
                         "a garden file as it was written; \"underbough recover\" saves what can "
                         "be read");
    return bytes;
}

QByteArray loadPhoto(const QString& path, const std::string& name)
{
    Connection connection(path, Connection::Mode::read);
    return readPhoto(connection, name);
}

QByteArray loadThumbnail(const QString& path, const std::string& name)
{
    Connection connection(path, Connection::Mode::read);
    if (storeVersion(connection) < 2)
        return smallPhoto(readPhoto(connection, name));
    Statement statement(connection, QStringLiteral("SELECT thumbnail FROM photo WHERE name = ?"));
    statement.bind(name).run();
    return statement.next() ? statement.bytes(0) : QByteArray();
}

std::vector<std::string> photoNames(const QString& path)
{
    Connection connection(path, Connection::Mode::read);
    Statement statement(connection, QStringLiteral("SELECT name FROM photo ORDER BY name"));
    statement.run();
    std::vector<std::string> names;
    while (statement.next())
        names.push_back(statement.text(0));
    return names;
}

void writePhoto(Connection& connection, const std::string& name, const QByteArray& bytes)
{
    const QByteArray thumbnail = smallPhoto(bytes);
    const QSize size_px = pictureSize_px(bytes);
    Statement statement(connection,
                        QStringLiteral("INSERT OR REPLACE INTO photo(name, bytes, crc, thumbnail, "
                                       "width_px, height_px) VALUES(?, ?, ?, ?, ?, ?)"));
    statement.bind(name).bind(bytes).bind(Checksum().add(name).add(bytes).value());
    if (thumbnail.isEmpty())
        statement.bindNull();
    else
        statement.bind(thumbnail);
    if (size_px.isValid())
        statement.bind(std::int64_t{size_px.width()}).bind(std::int64_t{size_px.height()});
    else
        statement.bindNull().bindNull();
    statement.run();
}

void addThumbnails(Connection& connection)
{
    Statement statement(connection, QStringLiteral("SELECT name FROM photo ORDER BY name"));
    statement.run();
    std::vector<std::string> names;
    while (statement.next())
        names.push_back(statement.text(0));
    for (const auto& name : names)
        writePhoto(connection, name, readPhoto(connection, name));
}

} // namespace app
