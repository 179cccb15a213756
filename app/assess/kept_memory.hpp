#pragma once

namespace app {

/// Lets the process keep memory that it frees, for the next use: an answer frees a few megabytes,
/// and getting them back from the system page by page for the next takes longer than the answer
/// itself. To be called once, first of all.
void keepFreedMemory();

} // namespace app
