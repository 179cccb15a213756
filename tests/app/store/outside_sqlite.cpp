#include "tests/app/store/outside_sqlite.hpp"

#include <QFile>

#include <sqlite3.h>

namespace outside {

std::string answer(const QString& path, const char* sql)
{
    sqlite3* database = nullptr;
    sqlite3_open(path.toUtf8().constData(), &database);
    sqlite3_stmt* statement = nullptr;
    std::string text;
    if (sqlite3_prepare_v2(database, sql, -1, &statement, nullptr) == SQLITE_OK &&
        sqlite3_step(statement) == SQLITE_ROW) {
        const auto* column = sqlite3_column_text(statement, 0);
        if (column != nullptr)
            text = reinterpret_cast<const char*>(column);
    } else if (sqlite3_errcode(database) != SQLITE_DONE) {
        text = sqlite3_errmsg(database);
    }
    sqlite3_finalize(statement);
    sqlite3_close(database);
    return text;
}

void run(const QString& path, const char* sql)
{
    (void)answer(path, sql);
}

std::string integrity(const QString& path)
{
    return answer(path, "PRAGMA integrity_check");
}

QByteArray bytes(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace outside
