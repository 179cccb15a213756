#pragma once

#include "app/paper/block.hpp"

#include <QByteArray>

namespace app {

/// The sheet as one HTML file that needs no other: figures are pictures inside it. UTF-8.
[[nodiscard]] QByteArray htmlOf(const Sheet& sheet, const QString& language);

} // namespace app
