#pragma once

#include <QByteArray>
#include <QString>

#include <string>

/// A garden file as another program sees it: SQLite's own library, without Qt and without us.
namespace outside {

/// The first column of the first row of an answer; an error's text if there is none.
[[nodiscard]] std::string answer(const QString& path, const char* sql);
void run(const QString& path, const char* sql);
/// "ok", or what SQLite's own check finds wrong.
[[nodiscard]] std::string integrity(const QString& path);
[[nodiscard]] QByteArray bytes(const QString& path);

} // namespace outside
