#include "tests/app/store/full_disk.hpp"

#include <sqlite3.h>

#include <limits>

namespace outside {
namespace {

constexpr int kEndless = std::numeric_limits<int>::max();
int writesLeft = kEndless;

/// A file of the layer: the real one follows it in memory.
struct LayerFile {
    sqlite3_file base;
};

sqlite3_file* real(sqlite3_file* file)
{
    return reinterpret_cast<sqlite3_file*>(reinterpret_cast<LayerFile*>(file) + 1);
}

int writeUnlessFull(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 at)
{
    if (writesLeft == 0)
        return SQLITE_FULL;
    if (writesLeft != kEndless)
        --writesLeft;
    return real(file)->pMethods->xWrite(real(file), bytes, count, at);
}

const sqlite3_io_methods kMethods{
    1,
    [](sqlite3_file* f) { return real(f)->pMethods->xClose(real(f)); },
    [](sqlite3_file* f, void* into, int count, sqlite3_int64 at) {
        return real(f)->pMethods->xRead(real(f), into, count, at);
    },
    writeUnlessFull,
    [](sqlite3_file* f, sqlite3_int64 size) { return real(f)->pMethods->xTruncate(real(f), size); },
    [](sqlite3_file* f, int flags) { return real(f)->pMethods->xSync(real(f), flags); },
    [](sqlite3_file* f, sqlite3_int64* size) {
        return real(f)->pMethods->xFileSize(real(f), size);
    },
    [](sqlite3_file* f, int level) { return real(f)->pMethods->xLock(real(f), level); },
    [](sqlite3_file* f, int level) { return real(f)->pMethods->xUnlock(real(f), level); },
    [](sqlite3_file* f, int* held) { return real(f)->pMethods->xCheckReservedLock(real(f), held); },
    [](sqlite3_file* f, int what, void* value) {
        return real(f)->pMethods->xFileControl(real(f), what, value);
    },
    [](sqlite3_file* f) { return real(f)->pMethods->xSectorSize(real(f)); },
    [](sqlite3_file* f) { return real(f)->pMethods->xDeviceCharacteristics(real(f)); },
    nullptr,
    nullptr,
    nullptr,
    nullptr,
    nullptr,
    nullptr,
};

sqlite3_vfs* below()
{
    static sqlite3_vfs* const kBelow = sqlite3_vfs_find("unix");
    return kBelow;
}

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags)
{
    const int code = below()->xOpen(below(), name, real(file), flags, outFlags);
    file->pMethods = real(file)->pMethods != nullptr ? &kMethods : nullptr;
    return code;
}

void layUnder()
{
    static sqlite3_vfs layer;
    if (layer.zName != nullptr)
        return;
    layer = *below();
    layer.zName = "underbough-full-disk";
    layer.pNext = nullptr;
    layer.szOsFile = static_cast<int>(sizeof(LayerFile)) + below()->szOsFile;
    layer.xOpen = openFile;
    sqlite3_vfs_register(&layer, 1);
}

} // namespace

void fillDiskAfter(int writes)
{
    layUnder();
    writesLeft = writes;
}

void emptyDisk()
{
    writesLeft = kEndless;
}

} // namespace outside
