#pragma once

/// A disk that SQLite finds full from some write on: a layer under its library, for the whole
/// program (sqlite.org/vfs.html).
namespace outside {

/// From now on the first `writes` succeed and all others find the disk full. \returns itself
void fillDiskAfter(int writes);
/// Room again for everything.
void emptyDisk();

} // namespace outside
