#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace app {

/// Which of `names` fit what was typed so far: those that start with it first, then those with a
/// word that starts with it, then those that hold it; case and accents don't count. Several words
/// may be typed, in any order; all must be found. Nothing typed gives the first `most` as they
/// stand. One entry may go by several names: parts divided by a line feed.
[[nodiscard]] std::vector<std::size_t> searchNames(const QStringList& names, const QString& typed,
                                                   std::size_t most);

} // namespace app
