#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <vector>

namespace app {

/// A table as RFC 4180 writes it, UTF-8: a comma between fields, CRLF after each record, quotes
/// around what holds a comma, a quote or a line break, quotes doubled.
[[nodiscard]] QByteArray csvOf(const std::vector<QStringList>& records);

} // namespace app
