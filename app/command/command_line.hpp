#pragma once

#include "app/command/streams.hpp"
#include "model/species/species.hpp"

#include <QString>
#include <QStringList>

#include <functional>
#include <optional>

namespace app {

/// What the command line came to.
struct CommandResult {
    int status{};                        ///< for the shell, when no window is wanted
    std::optional<QString> windowGarden; ///< a window is wanted, on this file; "": on an example
    QString language;                    ///< asked for, for that window; empty: not asked for
};

/// Reads the command line and does what it says. Words for people go to the streams; the standing
/// of the garden's file is left alone.
///
/// \param arguments   without the program's own name
/// \param loadTables  called only by verbs that need them
[[nodiscard]] CommandResult runCommandLine(const QStringList& arguments,
                                           const std::function<model::Tables()>& loadTables,
                                           Streams streams);

} // namespace app
