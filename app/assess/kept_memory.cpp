#include "app/assess/kept_memory.hpp"

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace app {

void keepFreedMemory()
{
#ifdef __GLIBC__
    constexpr int kMegabyte = 1 << 20;
    mallopt(M_MMAP_THRESHOLD, 32 * kMegabyte); // the most that glibc takes
    mallopt(M_TRIM_THRESHOLD, 128 * kMegabyte);
    mallopt(M_TOP_PAD, 4 * kMegabyte);
#endif
}

} // namespace app
