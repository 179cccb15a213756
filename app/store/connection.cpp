#include "app/store/connection.hpp"

#include <QFileInfo>
#include <QSqlError>
#include <QVariant>

#include <atomic>

namespace app {
namespace {

using Kind = StoreError::Kind;

/// SQLite's result codes (sqlite.org/rescode.html); the low byte of an extended one.
enum Code : int {
    kError = 1,
    kBusy = 5,
    kLocked = 6,
    kReadOnly = 8,
    kInputOutput = 10,
    kCorrupt = 11,
    kFull = 13,
    kCantOpen = 14,
    kNotADatabase = 26,
};

StoreError errorOf(const QSqlError& error)
{
    const auto said = error.databaseText().isEmpty() ? error.text() : error.databaseText();
    switch (error.nativeErrorCode().toInt() & 0xff) {
    case kBusy:
    case kLocked:
        return {Kind::busy, "a file that another program is writing", "one that is left alone"};
    case kReadOnly:
        return {Kind::readOnly, "a file that can't be written", "one that you may write"};
    case kFull:
        return {Kind::full, "a full disk", "room on it"};
    case kError: // our statements are right, so the tables are not
    case kCorrupt:
    case kNotADatabase:
        return {Kind::damaged, "damage (" + said.toStdString() + ")",
                "a garden file as it was written; \"underbough recover\" saves what can be read"};
    case kCantOpen: // the journal beside it, when the file itself could be opened
        return {Kind::readOnly, "a file or a folder that can't be written",
                "ones that you may write"};
    case kInputOutput:
        return {Kind::failed, "a disk that doesn't answer as it should", "one in working order"};
    default:
        return {Kind::failed, "\"" + said.toStdString() + "\"", "a garden file in working order"};
    }
}

QString newName()
{
    static std::atomic<int> last{0};
    return QStringLiteral("garden file %1").arg(++last);
}

} // namespace

Connection::Connection(const QString& path, Mode mode) : name_(newName())
{
    if (mode != Mode::create && !QFileInfo(path).isFile())
        throw StoreError(Kind::missing, "no file of that name", "a garden file");
    if (mode != Mode::create && !QFileInfo(path).isReadable())
        throw StoreError(Kind::failed, "a file that can't be opened", "one that you may read");
    database_ = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name_);
    try {
        open(path, mode);
    } catch (...) {
        database_ = {};
        QSqlDatabase::removeDatabase(name_);
        throw;
    }
}

Connection::~Connection()
{
    database_.close();
    database_ = {};
    QSqlDatabase::removeDatabase(name_);
}

void Connection::open(const QString& path, Mode mode)
{
    const bool writable = mode != Mode::read || QFileInfo(path).isWritable();
    // No query may touch the file before its time-out is set, hence the option.
    database_.setConnectOptions(writable ? QStringLiteral("QSQLITE_BUSY_TIMEOUT=1000")
                                         : QStringLiteral("QSQLITE_BUSY_TIMEOUT=1000;"
                                                          "QSQLITE_OPEN_READONLY"));
    database_.setDatabaseName(QFileInfo(path).absoluteFilePath());
    if (!database_.open())
        throw errorOf(database_.lastError());
    run(QStringLiteral("PRAGMA trusted_schema = OFF"));
    run(QStringLiteral("PRAGMA cell_size_check = ON"));
    if (mode == Mode::read)
        return run(QStringLiteral("PRAGMA query_only = ON"));
    run(QStringLiteral("PRAGMA synchronous = EXTRA"));
    run(QStringLiteral("PRAGMA foreign_keys = ON"));
    run(QStringLiteral("PRAGMA secure_delete = ON"));
}

void Connection::run(const QString& sql)
{
    QSqlQuery query(database_);
    if (!query.exec(sql))
        throw errorOf(query.lastError());
}

std::int64_t Connection::number(const QString& sql)
{
    Statement statement(*this, sql);
    statement.run();
    return statement.next() ? statement.number(0) : 0;
}

Statement::Statement(Connection& connection, const QString& sql) : query_(connection.database())
{
    query_.setForwardOnly(true);
    if (!query_.prepare(sql))
        throw errorOf(query_.lastError());
}

Statement& Statement::bindNext(const QVariant& value)
{
    query_.bindValue(bound_++, value);
    return *this;
}

void Statement::run()
{
    bound_ = 0;
    if (!query_.exec())
        throw errorOf(query_.lastError());
}

bool Statement::next()
{
    if (query_.next())
        return true;
    if (query_.lastError().isValid())
        throw errorOf(query_.lastError());
    return false;
}

Transaction::Transaction(Connection& connection) : connection_(connection)
{
    connection_.run(QStringLiteral("BEGIN IMMEDIATE"));
}

Transaction::~Transaction()
{
    if (done_)
        return;
    QSqlQuery query(connection_.database()); // a failed commit may have rolled back already
    (void)query.exec(QStringLiteral("ROLLBACK"));
}

void Transaction::commit()
{
    connection_.run(QStringLiteral("COMMIT"));
    done_ = true;
}

} // namespace app
