#pragma once

#include "app/store/store_error.hpp"

#include <QByteArray>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>

#include <optional>
#include <string>

namespace app {

/// A garden file held open for as long as this lives. A file that is not there is never made, apart
/// from `create`. Commits are on the disk when they return (docs/garden-file.md, "Safe writing").
class Connection {
public:
    enum class Mode {
        read,   ///< changes nothing, but finishes what a crashed program left half done
        write,  ///< changes an existing file
        create, ///< makes a file that is not there yet
    };

    /// \throws StoreError
    Connection(const QString& path, Mode mode);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    /// \throws StoreError
    void run(const QString& sql);
    /// The one number that a statement answers.
    /// \throws StoreError
    [[nodiscard]] std::int64_t number(const QString& sql);

    [[nodiscard]] QSqlDatabase& database() { return database_; }

private:
    void open(const QString& path, Mode mode);

    QString name_;
    QSqlDatabase database_;
};

/// A prepared statement. Values are bound in the order of its question marks.
class Statement {
public:
    /// \throws StoreError
    Statement(Connection& connection, const QString& sql);

    Statement& bind(std::int64_t value) { return bindNext(QVariant::fromValue<qlonglong>(value)); }
    Statement& bind(const std::string& text) { return bindNext(QString::fromStdString(text)); }
    Statement& bind(const QByteArray& bytes) { return bindNext(bytes); }
    Statement& bindNull() { return bindNext(QVariant()); }

    /// Runs it; the next bind() starts anew.
    /// \throws StoreError
    void run();
    /// The next row of the answer, if there is one.
    /// \throws StoreError
    [[nodiscard]] bool next();

    [[nodiscard]] bool isNull(int column) const { return query_.isNull(column); }
    [[nodiscard]] std::int64_t number(int column) const
    {
        return query_.value(column).toLongLong();
    }
    [[nodiscard]] std::string text(int column) const
    {
        return query_.value(column).toString().toStdString();
    }
    [[nodiscard]] QByteArray bytes(int column) const { return query_.value(column).toByteArray(); }

private:
    Statement& bindNext(const QVariant& value);

    QSqlQuery query_;
    int bound_{};
};

/// Everything until commit() is one step: whole, or undone when this goes.
class Transaction {
public:
    /// \throws StoreError
    explicit Transaction(Connection& connection);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    /// \throws StoreError
    void commit();

private:
    Connection& connection_;
    bool done_{};
};

} // namespace app
