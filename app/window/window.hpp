#pragma once

#include "app/format/units.hpp"
#include "model/species/species.hpp"

#include <QString>

#include <optional>

namespace app {

/// How to open the window.
struct WindowStart {
    QString garden;                   ///< file to open; empty: the last one, or an example
    std::optional<Measures> measures; ///< blank: as the system's locale has it
    QString language;                 ///< "de"; empty: the one asked for last, or the system's
};

/// Whether there is a display that a window could be opened on.
[[nodiscard]] bool hasDisplay();

/// Opens the window and stays until it is closed.
///
/// \param argc, argv  of main(); Qt takes its own options from them
/// \returns the program's exit status
[[nodiscard]] int runWindow(int& argc, char** argv, const model::Tables& tables,
                            const WindowStart& start);

} // namespace app
