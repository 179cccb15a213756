#pragma once

#include <istream>
#include <ostream>

namespace app {

/// Where a command reads and writes; tests hand in their own.
struct Streams {
    std::istream& in;
    std::ostream& out;
    std::ostream& err;
};

/// What the program gives back to the shell.
enum ExitStatus : int {
    kFine = 0,
    kAttention = 1, ///< only where --fail-on-attention asked for it
    kUnusable = 2,  ///< input that can't be used; one line on the error stream says why
};

} // namespace app
