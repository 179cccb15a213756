#pragma once

#include <CLI/CLI.hpp>

namespace app {

/// Puts the help of a command line, which is built in English, into the language that sentences are
/// in (speak()): the texts marked "Help" where they stand, the headings, and what an option wants.
void translateHelp(CLI::App& app);

} // namespace app
